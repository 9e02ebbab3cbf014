// The body of a request, no longer than it may be.

import type { IncomingMessage } from "node:http";

/** A log and CSV files of 5 MB, before and after the edit, with room for the signs that JSON escapes. */
const LONGEST_BODY = 32_000_000;

/** The text, or the status to refuse with: 413 as soon as it is known to be too long, 400 where it is no UTF-8 or cut off. */
export async function bodyOf(
  request: IncomingMessage,
  longest = LONGEST_BODY,
): Promise<string | { readonly status: 400 | 413 }> {
  if (Number(request.headers["content-length"] ?? 0) > longest) return { status: 413 };
  const parts: Buffer[] = [];
  let length = 0;
  try {
    for await (const part of request as AsyncIterable<Buffer>) {
      length += part.length;
      if (length > longest) return { status: 413 };
      parts.push(part);
    }
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(Buffer.concat(parts));
  } catch {
    return { status: 400 };
  }
}
