// Which requests are answered at all: only those of our own pages, in the browser of whoever was told the address.

import { createHash, randomBytes, timingSafeEqual } from "node:crypto";

/** What of a request decides, as it was sent. */
export interface Asked {
  readonly url: string;
  readonly method: string;
  /** Every Host header, every Origin header: one that is sent twice is not trusted. */
  readonly hosts: readonly string[];
  readonly origins: readonly string[];
  /** Sec-Fetch-Site, which a browser sends and a script cannot forge. */
  readonly site: string | undefined;
}

export interface Door {
  readonly port: number;
  readonly secret: string;
}

/** 192 bits, in letters that an address holds as they are. */
export function newSecret(): string {
  return randomBytes(24).toString("base64url");
}

/**
 * The path behind the secret, such as "save/3f" or "", or the status to refuse with: 403 for another site's request,
 * 404 for whatever is not exactly one of our paths. Nothing is decoded: an address with %, .., // or ? is no path of
 * ours. The name of the host is checked first, so that a foreign name led to this machine learns nothing.
 */
export function pathBehindDoor(asked: Asked, { port, secret }: Door): string | 403 | 404 {
  const [host, ...hosts] = asked.hosts;
  if (hosts.length > 0 || (host !== `127.0.0.1:${port}` && host !== `localhost:${port}`)) return 403;
  const [, given = "", path] = /^\/([\w-]+)\/((?:[a-z0-9-]+(?:\/[a-z0-9-]+)*)?)$/.exec(asked.url) ?? [];
  if (path === undefined || !sameText(given, secret)) return 404;
  if (asked.site !== undefined && asked.site !== "same-origin" && asked.site !== "none") return 403;
  const [origin, ...origins] = asked.origins;
  if (origins.length > 0 || (origin !== undefined && origin !== `http://${host}`)) return 403;
  // A page of ours always says where a change comes from.
  if (origin === undefined && asked.method !== "GET") return 403;
  return path;
}

/** Takes as long for a near miss as for a far one. */
function sameText(a: string, b: string): boolean {
  const [x, y] = [a, b].map((text) => createHash("sha256").update(text).digest());
  return timingSafeEqual(x!, y!);
}
