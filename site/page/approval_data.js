// Approval data of a fastener: a file that fills the fields which only its assessment or evaluation report gives, so that
// they are typed once. The engine says which fields those are and what is wrong with a file.

class ApprovalTools {
  constructor(seat) {
    this.seat = seat;
    this.faults = make("ul", { class: "fault", "data-approval-faults": "", role: "status", hidden: true });
    const input = make("input", { type: "file", accept: ".json,application/json", class: "unseen", tabindex: -1, "aria-label": "Approval data file",
      change: () => {
        this.open(input.files[0]);
        input.value = "";
      } });
    const button = (label, key, click) => make("button", { type: "button", class: "tool", "data-key": key, click }, label);
    this.element = make("div", { class: "approval-data" },
      make("p", { class: "tools" }, button("Open approval data", "open approval", () => input.click()), input, " ",
        button("Save approval data", "save approval", () => this.save())), this.faults);
  }

  tell(lines) {
    this.faults.hidden = lines.length === 0;
    fill(this.faults, lines.map((line) => make("li", {}, line)));
  }

  async open(file) {
    if (!file) return;
    if (file.size > FILE_BYTES_MAX) {
      this.tell([file.name + ": " + texts.problems.too_long + "."]);
      return;
    }
    const text = await file.text();
    const read = engineSays((engine) => engine.approval_read(text));
    this.tell(read.faults ? read.faults.map((fault) => file.name + ": " + fault.sentence) : []);
    if (!read.faults) this.take(read);
  }

  // One step. What another fastener's file had said must not stay beside this one's, so the fields it leaves out are emptied.
  take({ rule, title, anchorage, left_out: leftOut }) {
    const project = this.seat.project();
    const changes = project.at("anchorage.rule") === rule
      ? [...Object.entries(anchorage), ...leftOut.map((key) => [key, undefined])].map(([key, value]) => ({ path: within("anchorage", key), value }))
      : [{ path: "anchorage", value: { rule, ...anchorage } }];
    project.change(changes);
    project.rest();
    this.seat.say("Approval data taken" + (title === "" ? "" : ": " + title));
  }

  save() {
    const file = engineSays((engine) => engine.approval_write(this.seat.project().text));
    if (file === null) {
      this.tell(["There is nothing to save yet: the project has faults, or its anchor rule asks for no approval data."]);
      return;
    }
    this.tell([]);
    saveText(fileName((file.title || "anchor") + " approval"), "application/json", projectFileText(file) + "\n");
  }
}
