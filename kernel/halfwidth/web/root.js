// The path that all addresses of a session are under. A window that was left open while the program
// was started anew takes it from the window that was opened since.

import { store } from "./drafts.js";

const { job, root: mine } = document.body.dataset;
const key = `halfwidth root ${job}`;

store?.setItem(key, mine);

export const root = () => store?.getItem(key) ?? mine;
