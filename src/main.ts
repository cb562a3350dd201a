import '@fontsource-variable/inter';
import './panel/tokens.css';
import './panel/base.css';
import { followAddress } from './practice/index.ts';

const place = document.getElementById('app');
if (place !== null)
  followAddress(place, {
    desk: () => import('./desk/index.ts'),
    bench: () => import('./bench/index.ts'),
  });
