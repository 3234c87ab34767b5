// Which check a question is about: all required ones together, or one of those that were told of this project.

const CHECK_STUDIES = ["how-far"];

class CheckChoice {
  constructor(changed) {
    this.select = make("select", { "data-key": "check choice", change: changed });
    this.element = make("p", {}, make("label", { class: "check-choice" }, "Asked of ", this.select));
    this.told = "";
  }

  get value() {
    return this.select.value;
  }

  update({ report }) {
    const ids = [...new Set(report.checks.filter((check) => check.at).map((check) => check.id))];
    if (ids.join() === this.told) return;
    this.told = ids.join();
    const chosen = ids.includes(this.value) ? this.value : "";
    fill(this.select, make("option", { value: "" }, "All required checks together"), ids.map((id) => make("option", { value: id }, checkTitle(id))));
    this.select.value = chosen;
  }
}
