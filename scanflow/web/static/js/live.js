// Brings what the server shows now into the page, without leaving it: the scan box keeps its focus and its sounds.

/** Replaces each part marked `data-live`, the edge and the scan box's label by what the station's address gives now. */
export async function refresh() {
  const response = await fetch(document.body.dataset.here, { credentials: "same-origin" }).catch(() => null);
  if (!response?.ok) return;
  if (response.redirected) return location.reload();
  const fresh = new DOMParser().parseFromString(await response.text(), "text/html");
  const parts = (page) => [...page.querySelectorAll("[data-live]")];
  const [old, now] = [parts(document), parts(fresh)];
  if (old.length !== now.length || !document.querySelector(".scan") !== !fresh.querySelector(".scan")) {
    document.querySelector("main").replaceWith(fresh.querySelector("main"));
  } else {
    const opened = parts(document).flatMap((part) => [...part.querySelectorAll("details")].map((each) => each.open));
    old.forEach((part, i) => part.replaceWith(now[i]));
    parts(document)
      .flatMap((part) => [...part.querySelectorAll("details")])
      .forEach((each, i) => (each.open = opened[i] ?? false));
    exchange(".scan label[for]", fresh);
    exchange(".scan .tick", fresh);
  }
  document.title = fresh.title;
  document.querySelector(".side").className = fresh.querySelector(".side").className;
  document.body.classList.remove("away");
  document.dispatchEvent(new Event("refreshed"));
}

/** A part of the scan box that comes and goes. */
function exchange(selector, fresh) {
  const [old, now] = [document.querySelector(selector), fresh.querySelector(selector)];
  if (old && now) old.replaceWith(now);
  else if (old) old.remove();
  else if (now) document.querySelector(".scan .label").after(now);
}
