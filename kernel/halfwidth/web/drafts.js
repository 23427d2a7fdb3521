// Keeps in the browser what was typed until the program has it on disk, so that neither a closed
// window nor a stopped program loses it.

export const store = (() => {
  try {
    return window.localStorage;
  } catch {
    return null; // forbidden by the browser's settings: then only the window itself keeps it
  }
})();

export class Drafts {
  #key;
  #kept;

  constructor(...about) {
    this.#key = `halfwidth ${about.join(" ")}`;
    this.#kept = JSON.parse(store?.getItem(this.#key) ?? "{}");
  }

  put(place, typed, seen) {
    this.#kept[place] = { typed, seen };
    this.#save();
  }

  drop(place) {
    delete this.#kept[place];
    this.#save();
  }

  get(place) {
    return this.#kept[place];
  }

  places() {
    return Object.keys(this.#kept);
  }

  #save() {
    if (this.places().length === 0) {
      store?.removeItem(this.#key);
    } else {
      store?.setItem(this.#key, JSON.stringify(this.#kept));
    }
  }
}
