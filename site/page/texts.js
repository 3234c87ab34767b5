// The text tables as they are used: rows of steps by their code, rules with their fields. They travel as columns and by
// places, which is shorter.

const TRUST_LETTERS = { p: "published", s: "secondary", m: "memory", d: "derived" };
const SHAPE_LETTERS = {
  g: "given", f: "formula", k: "constant", t: "table", i: "interpolated", a: "geometry", s: "solved", b: "searched", c: "condition", r: "reason", n: "name",
};

function rowsOf(columns) {
  const rows = {};
  let place = 0;
  let formula = 0;
  for (const [first, count] of columns.runs) {
    for (let code = first; code < first + count; code += 1) {
      const told = {
        s: columns.s[place], w: columns.w[place], k: columns.k[place], c: columns.clauses[columns.c[place]],
        t: TRUST_LETTERS[columns.t[place]], h: SHAPE_LETTERS[columns.h[place]],
      };
      if (told.h === "formula") {
        if (columns.f[formula] !== "") told.f = columns.f[formula];
        told.y = columns.y[formula].split(" ").filter(Boolean);
        formula += 1;
      }
      rows[code] = told;
      place += 1;
    }
  }
  return rows;
}

// Entries are added to the tables that are there; lists take their place.
function addTexts({ rows, rules, fields, ...others }) {
  texts.rows = { ...texts.rows, ...rowsOf(rows) };
  if (rules) {
    for (const rule of [...rules.demand, ...rules.anchor]) rule.fields = rule.fields.map((place) => fields[place]);
    texts.rules = rules;
  }
  for (const [name, table] of Object.entries(others)) texts[name] = Array.isArray(table) ? table : { ...texts[name], ...table };
}

texts.rows = rowsOf(texts.rows);
