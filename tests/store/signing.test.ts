import { createPublicKey, verify } from 'node:crypto';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { parseDecision, decisionText, textToSign } from '../../src/core/review/index.ts';
import { openKeyMemory, openKeyStore } from '../../src/store/signing/keyStore.ts';
import { openSigner, verifyDecision } from '../../src/store/signing/sign.ts';
import 'fake-indexeddb/auto';
import { decided } from '../review/runs.ts';

/** The same check by another hand: OpenSSL, through the platform's crypto module. */
function opensslSays(publicKey: string, value: string, text: string): boolean {
  const x = Buffer.from(publicKey, 'hex').toString('base64url');
  const key = createPublicKey({ key: { kty: 'OKP', crv: 'Ed25519', x }, format: 'jwk' });
  return verify(null, Buffer.from(text, 'utf8'), key, Buffer.from(value, 'hex'));
}

afterEach(() => vi.unstubAllGlobals());

describe.each([
  ['a browser that has Ed25519', true],
  ['a browser that has none', false],
])('the counter-signature in %s', (_, platform) => {
  const world = (): void => {
    if (!platform) vi.stubGlobal('crypto', { getRandomValues: crypto.getRandomValues.bind(crypto) });
  };

  it('is good for what was decided, also to another program, and for nothing else', async () => {
    world();
    const signer = await openSigner(openKeyMemory());
    expect(signer.installation.held).toBe(platform ? 'platform' : 'page');
    const decision = await signer.counterSign(decided());
    const { publicKey, value } = decision.signature;
    expect(publicKey).toBe(signer.installation.publicKey);
    expect(opensslSays(publicKey, value, textToSign(decision))).toBe(true);
    expect(await verifyDecision(decision)).toBe('good');
    const changed = { ...decision, assessor: { ...decision.assessor, name: 'Somebody else' } };
    expect(await verifyDecision(changed)).toBe('bad');
    expect(await verifyDecision({ ...decision, decision: 'notYet', validity: null })).toBe('bad');
    const other = await openSigner(openKeyMemory());
    const signature = { ...decision.signature, publicKey: other.installation.publicKey };
    expect(await verifyDecision({ ...decision, signature })).toBe('bad');
  });

  it('is refused with a key that is no key', async () => {
    world();
    const decision = await (await openSigner(openKeyMemory())).counterSign(decided());
    const signature = { ...decision.signature, publicKey: 'f'.repeat(64) };
    expect(await verifyDecision({ ...decision, signature })).toBe('bad');
  });

  it('survives the file', async () => {
    world();
    const decision = await (await openSigner(openKeyMemory())).counterSign(decided());
    const read = parseDecision(decisionText(decision));
    if ('problem' in read) throw new Error(read.problem.says);
    expect(await verifyDecision(read.decision)).toBe('good');
  });
});

describe('the key of an installation', () => {
  it('cannot be read out where the browser holds it', async () => {
    let kept: CryptoKey | null = null;
    const memory = openKeyMemory();
    const signer = await openSigner({
      keep: async (make) => {
        const key = await memory.keep(make);
        if (key.held === 'platform') kept = key.pair.privateKey;
        return key;
      },
    });
    expect(signer.installation.held).toBe('platform');
    if (kept === null) throw new Error('no key was kept');
    await expect(crypto.subtle.exportKey('pkcs8', kept)).rejects.toThrow();
  });

  it('does not sign what contradicts itself', async () => {
    const signer = await openSigner(openKeyMemory());
    const body = decided({ decision: 'notYet' });
    await expect(signer.counterSign(body)).rejects.toThrow('validity');
  });

  it('is the same when it is opened again, also by two pages at once', async () => {
    vi.stubGlobal('crypto', { getRandomValues: crypto.getRandomValues.bind(crypto) });
    const store = () => openKeyStore('key-test');
    const [a, b] = await Promise.all([store().then(openSigner), store().then(openSigner)]);
    const later = await openSigner(await store());
    expect([b.installation, later.installation]).toEqual([a.installation, a.installation]);
  });
});
