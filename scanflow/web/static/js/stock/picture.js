// A thing's picture: what was chosen is shown before it is sent, and a computer's own camera can take one.

import { make, press } from "../page/elements.js";

let input = null;
const wanted = { facingMode: { ideal: "environment" }, width: { ideal: 1920 }, height: { ideal: 1440 } };
const QUALITY = 0.92;

const shown = make("img", "shot");
shown.alt = "The picture as it is now";

function show() {
  URL.revokeObjectURL(shown.src);
  shown.remove();
  const [file] = input.files;
  if (!file) return;
  shown.src = URL.createObjectURL(file);
  input.after(shown);
}

async function take(video) {
  const canvas = document.createElement("canvas");
  Object.assign(canvas, { width: video.videoWidth, height: video.videoHeight });
  canvas.getContext("2d").drawImage(video, 0, 0);
  const blob = await new Promise((done) => canvas.toBlob(done, "image/jpeg", QUALITY));
  const files = new DataTransfer();
  files.items.add(new File([blob], "camera.jpg", { type: "image/jpeg" }));
  input.files = files.files;
  show();
}

/** Phones take a picture by the field itself; elsewhere a button opens the camera, and again to shut it. */
function offer() {
  const open = press("Take it with the webcam");
  const now = press("Take the picture");
  const video = document.createElement("video");
  Object.assign(video, { muted: true, playsInline: true, className: "whole" });
  video.setAttribute("aria-label", "What the webcam sees");
  input.after(open);

  function shut() {
    video.srcObject?.getTracks().forEach((track) => track.stop());
    video.srcObject = null;
    video.remove();
    now.remove();
  }

  open.addEventListener("click", async () => {
    if (video.srcObject) return shut();
    try {
      video.srcObject = await navigator.mediaDevices.getUserMedia({ video: wanted });
      await video.play();
    } catch {
      shut();
      open.textContent = "The webcam does not start. Choose a file, or press again.";
      return;
    }
    open.after(video, now);
    now.focus();
  });
  now.addEventListener("click", async () => {
    await take(video);
    shut();
    open.focus();
  });
  addEventListener("pagehide", shut);
}

/** The field may have been exchanged. */
function begin() {
  const found = document.querySelector('input[type="file"][name="photo"]');
  if (!found || found === input) return;
  input = found;
  input.addEventListener("change", show);
  if (navigator.mediaDevices?.getUserMedia && matchMedia("(pointer: fine)").matches) offer();
}

begin();
document.addEventListener("refreshed", begin);
