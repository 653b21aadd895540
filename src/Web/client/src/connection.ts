// When the program was stopped and started again, the page starts anew: all it showed is in the saved file.

document.addEventListener("components-reconnect-state-changed", (event) => {
  const state = (event as CustomEvent<{ state: string }>).detail.state;
  if (state === "rejected") location.reload();
});
export {};
