import http, { type IncomingHttpHeaders, type RequestOptions } from 'node:http';
import https from 'node:https';

export interface Answer {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly body: Buffer;
}

/** One request, sent as written: unlike fetch it neither tidies the path nor unpacks the body nor follows a redirect. */
export function ask(url: string, path: string, options: RequestOptions = {}): Promise<Answer> {
  const { hostname, port, protocol } = new URL(url);
  const { request } = protocol === 'https:' ? https : http;
  return new Promise((resolve, reject) => {
    const sent = request({ hostname, port, path, agent: false, rejectUnauthorized: false, ...options }, (response) => {
      const chunks: Buffer[] = [];
      response.on('data', (chunk: Buffer) => chunks.push(chunk));
      response.on('end', () =>
        resolve({ status: response.statusCode ?? 0, headers: response.headers, body: Buffer.concat(chunks) }),
      );
    });
    sent.on('error', reject);
    sent.end();
  });
}
