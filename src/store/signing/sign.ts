import { contradiction, textToSign, type Decision, type DecisionBody } from '../../core/review/index.ts';
import { fromHex, toHex } from './hex.ts';
import type { KeptKey, KeyStore } from './keyStore.ts';

/** The installation as it is told to a reader. */
export interface Installation {
  /** Public key, 64 hex digits: what a counter-signature is checked against. */
  readonly publicKey: string;
  readonly held: KeptKey['held'];
}

/** What signs in the name of this installation. */
export interface Signer {
  readonly installation: Installation;
  /** Counter-signs a decision. Rejects with an Error where it contradicts itself. */
  counterSign(body: DecisionBody): Promise<Decision>;
}

/** Signs with the key that is kept, or makes one. */
export async function openSigner(store: KeyStore): Promise<Signer> {
  const key = await store.keep(makeKey);
  const publicKey = await publicKeyOf(key);
  return {
    installation: { publicKey, held: key.held },
    async counterSign(body) {
      const against = contradiction(body);
      if (against !== null) throw new Error(`${against.where}: ${against.says}`);
      const value = toHex(await signWith(key, bytesOf(body)));
      return { ...body, signature: { algorithm: 'Ed25519', publicKey, value } };
    },
  };
}

/**
 * Checks a decision's counter-signature. `good`: the holder of that key signed exactly this. It does not say who holds
 * the key: compare it with the one an installation shows.
 */
export async function verifyDecision(decision: Decision): Promise<'good' | 'bad'> {
  const { publicKey, value } = decision.signature;
  const good = hasPlatform()
    ? await verifyByPlatform(fromHex(publicKey), fromHex(value), bytesOf(decision))
    : await verifyByPage(fromHex(publicKey), fromHex(value), bytesOf(decision));
  return good ? 'good' : 'bad';
}

function bytesOf(decided: DecisionBody | Decision): Uint8Array<ArrayBuffer> {
  return new TextEncoder().encode(textToSign(decided));
}

/** WebCrypto is missing where a page is not served securely. */
function hasPlatform(): boolean {
  return 'subtle' in crypto;
}

async function makeKey(): Promise<KeptKey> {
  if (hasPlatform()) {
    try {
      const pair = await crypto.subtle.generateKey({ name: 'Ed25519' }, false, ['sign', 'verify']);
      return { held: 'platform', pair };
    } catch (reason) {
      if (!(reason instanceof DOMException) || reason.name !== 'NotSupportedError') throw reason;
    }
  }
  const { secretKey } = (await page()).keygen();
  return { held: 'page', secret: secretKey };
}

async function publicKeyOf(key: KeptKey): Promise<string> {
  if (key.held === 'page') return toHex((await page()).getPublicKey(key.secret));
  return toHex(new Uint8Array(await crypto.subtle.exportKey('raw', key.pair.publicKey)));
}

async function signWith(key: KeptKey, bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array> {
  if (key.held === 'page') return (await page()).sign(bytes, key.secret);
  return new Uint8Array(await crypto.subtle.sign({ name: 'Ed25519' }, key.pair.privateKey, bytes));
}

async function verifyByPlatform(
  publicKey: Uint8Array<ArrayBuffer>,
  value: Uint8Array<ArrayBuffer>,
  bytes: Uint8Array<ArrayBuffer>,
): Promise<boolean> {
  try {
    const key = await crypto.subtle.importKey('raw', publicKey, { name: 'Ed25519' }, true, ['verify']);
    return await crypto.subtle.verify({ name: 'Ed25519' }, key, value, bytes);
  } catch (reason) {
    if (!(reason instanceof DOMException)) throw reason;
    if (reason.name === 'NotSupportedError') return verifyByPage(publicKey, value, bytes);
    // A key that is no point of the curve signs nothing.
    return false;
  }
}

async function verifyByPage(publicKey: Uint8Array, value: Uint8Array, bytes: Uint8Array): Promise<boolean> {
  return (await page()).verify(value, bytes, publicKey);
}

/** Ed25519 in plain arithmetic, loaded only where the browser has none. */
async function page() {
  const ed25519 = await import('@noble/ed25519');
  // Named where it is fetched: else every digest of that package is fetched with it.
  const { sha512 } = await import('@noble/hashes/sha2.js');
  ed25519.hashes.sha512 = sha512;
  return ed25519;
}
