export { default as Bench } from './Bench.svelte';
