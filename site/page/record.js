// A record of motion that the reader opens: kept for this visit only, and the same for every study that takes one.

const RECORD_STUDIES = ["rocking", "fragility", "response-spectrum"];
const RECORD_BYTES_MAX = 8_000_000;

const broughtRecord = { name: "", text: "", problem: "", listeners: new Listeners() };

async function bringRecord(file) {
  if (!file) return;
  if (file.size > RECORD_BYTES_MAX) {
    setRecord("", "", file.name + ": " + texts.problems.too_long + ". A record has at most 8 MB.");
    return;
  }
  setRecord(file.name, await file.text(), "");
}

function setRecord(name, text, problem) {
  Object.assign(broughtRecord, { name, text, problem });
  broughtRecord.listeners.tell();
}

class RecordControl {
  constructor(changed) {
    this.input = make("input", { type: "file", accept: ".csv,.txt,.at2,.dat,.tsv,text/*", class: "unseen", tabindex: -1, "aria-label": "Record of motion",
      change: () => {
        bringRecord(this.input.files[0]);
        this.input.value = "";
      } });
    this.element = make("div", { class: "record" });
    this.render();
    broughtRecord.listeners.add(() => {
      this.render();
      changed();
    });
  }

  render() {
    const { name, problem } = broughtRecord;
    keepingFocus(this.element, () => fill(this.element,
      make("button", { type: "button", class: "plain", "data-key": "open record", click: () => this.input.click() }, name ? "Open another record" : "Open a record of motion"), this.input,
      name && make("span", { class: "record-name" }, name),
      name && make("button", { type: "button", class: "plain", "data-key": "drop record", click: () => setRecord("", "", "") }, "Take it away"),
      problem && make("span", { role: "alert", class: "record-problem" }, problem),
      !name && make("span", { class: "note" }, "Columns of time, acceleration and, where there is one, vertical acceleration; or a header with its time step and then values. It stays on this page.")));
  }

  // A record may be dropped on its study; a project file goes on to the page.
  takeDrops(element) {
    element.addEventListener("drop", (event) => {
      const file = event.dataTransfer && event.dataTransfer.files[0];
      if (!file || /\.json$/i.test(file.name)) return;
      event.preventDefault();
      event.stopPropagation();
      bringRecord(file);
    });
  }
}
