import { generateKeyPairSync, sign } from 'node:crypto';

/** One DER element: tag, length, content. */
function der(tag: number, ...parts: readonly Buffer[]): Buffer {
  const content = Buffer.concat(parts);
  const { length } = content;
  const head = length < 128 ? [tag, length] : [tag, 0x82, length >> 8, length & 0xff];
  return Buffer.concat([Buffer.from(head), content]);
}

const ECDSA_SHA256 = der(0x30, Buffer.from('06082a8648ce3d040302', 'hex'));
const COMMON_NAME = Buffer.from('0603550403', 'hex');

/** A certificate for localhost, made on the spot (X.509 v1, P-256), so that no key lies in the repository. */
export function selfSigned(): { cert: string; key: string } {
  const { publicKey, privateKey } = generateKeyPairSync('ec', { namedCurve: 'P-256' });
  const name = der(0x30, der(0x31, der(0x30, COMMON_NAME, der(0x0c, Buffer.from('localhost')))));
  const validity = der(0x30, der(0x17, Buffer.from('200101000000Z')), der(0x17, Buffer.from('491231235959Z')));
  const subjectKey = publicKey.export({ type: 'spki', format: 'der' });
  const body = der(0x30, der(0x02, Buffer.from([1])), ECDSA_SHA256, name, validity, name, subjectKey);
  const signature = der(0x03, Buffer.from([0]), sign('sha256', body, privateKey));
  const base64 = der(0x30, body, ECDSA_SHA256, signature).toString('base64').replace(/.{64}/g, '$&\n');
  return {
    cert: `-----BEGIN CERTIFICATE-----\n${base64}\n-----END CERTIFICATE-----\n`,
    key: privateKey.export({ type: 'pkcs8', format: 'pem' }).toString(),
  };
}
