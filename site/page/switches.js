// The switches at the head of each page: units, and the light or dark look.

function unitSwitch() {
  const names = { si: "SI", us: "US" };
  const buttons = Object.entries(names).map(([system, name]) => make("button", { type: "button", "data-units": system, click: () => unitSystem.choose(system) }, name));
  const press = () => buttons.forEach((button) => button.setAttribute("aria-pressed", String(button.dataset.units === unitSystem.now)));
  unitSystem.changed.add(press);
  press();
  return make("div", { class: "switch", role: "group", "aria-label": "Units" }, buttons);
}

// The look follows the reader's system until a button says otherwise.
function lookSwitch() {
  const system = matchMedia("(prefers-color-scheme: dark)");
  const chosen = () => recalled("localStorage", "look") || (system.matches ? "dark" : "light");
  const buttons = ["light", "dark"].map((look) => make("button", { type: "button", "data-look": look, click: () => {
    remember("localStorage", "look", look === (system.matches ? "dark" : "light") ? null : look);
    press();
  } }, sentenceCase(look)));
  const press = () => {
    const look = chosen();
    document.documentElement.style.colorScheme = recalled("localStorage", "look") === null ? "" : look;
    buttons.forEach((button) => button.setAttribute("aria-pressed", String(button.dataset.look === look)));
  };
  system.addEventListener("change", press);
  press();
  return make("div", { class: "switch", role: "group", "aria-label": "Look" }, buttons);
}

function fillSwitches() {
  const place = document.getElementById("switches");
  if (place !== null) fill(place, unitSwitch(), lookSwitch());
}
