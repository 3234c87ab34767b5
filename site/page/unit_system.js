// Which units the reader wants: one choice for everything on the page.

const unitSystem = {
  now: recalled("localStorage", "units") === "us" ? "us" : "si",
  changed: new Listeners(),

  choose(system) {
    if (system === this.now) return;
    this.now = system;
    remember("localStorage", "units", system);
    this.changed.tell();
  },
};
