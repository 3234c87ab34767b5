// Project files: saved as a download, opened by a button or dropped onto the page.

function saveProject(project) {
  const assessment = assessed(project.text, unitSystem.now);
  const tree = { ...project.tree, written_by: texts.engine };
  const answer = lastAnswer(assessment);
  delete tree.last_answer;
  if (answer !== null) tree.last_answer = answer;
  saveText(fileName(tree.title), "application/json", projectFileText(tree) + "\n");
}

function saveText(name, type, text) {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = make("a", { href: address, download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

// A line for each thing that fits on one, so that people can read the file and compare two of them.
const FILE_LINE_LENGTH = 140;

function projectFileText(value, indent = "") {
  const line = lineText(value);
  if (indent.length + line.length <= FILE_LINE_LENGTH || value === null || typeof value !== "object") return line;
  const inner = indent + "  ";
  if (Array.isArray(value)) return "[\n" + value.map((item) => inner + projectFileText(item, inner)).join(",\n") + "\n" + indent + "]";
  const lines = Object.entries(value).map(([key, item]) => inner + JSON.stringify(key) + ": " + projectFileText(item, inner));
  return "{\n" + lines.join(",\n") + "\n" + indent + "}";
}

function lineText(value) {
  if (Array.isArray(value)) return "[" + value.map(lineText).join(", ") + "]";
  if (value === null || typeof value !== "object") return JSON.stringify(value);
  const entries = Object.entries(value).map(([key, item]) => JSON.stringify(key) + ": " + lineText(item));
  return entries.length === 0 ? "{}" : "{ " + entries.join(", ") + " }";
}

function fileName(title) {
  const plain = (typeof title === "string" ? title : "").toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-+|-+$/g, "").slice(0, 60);
  return (plain || "cabinet") + ".json";
}

async function openProject(file) {
  if (!file) return;
  if (file.size > FILE_BYTES_MAX) {
    readersCabinet.say({ kind: "faults", lines: [file.name + ": " + texts.problems.too_long + ". A project file has at most 1 MB."] });
    return;
  }
  if (SCHEDULE_FILE.test(file.name)) {
    readersCabinet.say({ kind: "faults", lines: [file.name + " looks like a schedule of many cabinets. The chapter “A hall full” takes those."] });
    return;
  }
  readersCabinet.receive(await file.text(), file.name);
}

function openButton(className, key = "open") {
  const input = make("input", { type: "file", accept: ".json,application/json", class: "unseen", tabindex: -1, "aria-label": "Project file",
    change: () => {
      openProject(input.files[0]);
      input.value = "";
    } });
  return [make("button", { type: "button", class: className, "data-key": key, click: () => input.click() }, "Open a file"), input];
}

const SCHEDULE_FILE = /\.(csv|tsv|jsonl|ndjson)$/i;

// What was dropped onto the page: a project, or tables for the hall where it is open.
function takeDropped(files) {
  if (openHall.sheet !== null && SCHEDULE_FILE.test(files[0].name)) openHall.sheet.bring(files);
  else openProject(files[0]);
}
