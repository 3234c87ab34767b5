// The notice that the page has not started: hidden here, as the very last thing, when everything before it ran.
// The builder puts the call of `started` behind all other code.

function started() {
  const notice = document.getElementById("not-started");
  if (notice === null) return;
  const style = getComputedStyle(document.documentElement).getPropertyValue("--steadfoot-style").trim();
  if (style === "whole") {
    notice.hidden = true;
    return;
  }
  notice.textContent =
    "The style of this page is missing or was altered on its way to you, so drawings and tables may be hard to read. " +
    "The calculations run. Ask for the file again, packed as a zip archive.";
}
