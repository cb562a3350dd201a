import { openKeyMemory, openKeyStore } from './keyStore.ts';
import { openSigner, type Signer } from './sign.ts';

export { verifyDecision, type Installation, type Signer } from './sign.ts';

let opened: Promise<Signer> | null = null;

/** What signs in the name of this installation. Where the browser keeps nothing, a key that lasts as long as the page. */
export function openInstallation(): Promise<Signer> {
  opened ??= openKeyStore().catch(openKeyMemory).then(openSigner);
  return opened;
}
