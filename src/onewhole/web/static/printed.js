// A page printed in a tab of its own: seen again, this one shows what is printed now.

document.addEventListener("submit", (event) => {
  if (!(event.target instanceof HTMLFormElement) || event.target.target !== "_blank") return;
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") location.reload();
  });
});
