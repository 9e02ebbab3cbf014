// The script of a live page with the whole public door, for notebooks that are not ours.

import * as door from "../index.ts";
import { offerLive } from "./main.ts";

Object.assign(globalThis, { mullbook: door });
offerLive();
