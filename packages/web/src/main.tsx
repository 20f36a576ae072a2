import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./frame/app.tsx";
import "./look/tokens.css";
import "./look/base.css";
import "./look/frame.css";
import "./look/field.css";
import "./look/figure.css";
import "./look/station.css";
import "./look/card.css";
import "./look/start.css";
import "./look/phone.css";

const page = document.getElementById("page");
if (!page) throw new Error("the page has no place for its content");

createRoot(page).render(
  <StrictMode>
    <App />
  </StrictMode>,
);

// From then on the page opens with the server stopped. Browsers allow it on this machine and over a safe line only.
if (import.meta.env.PROD) void navigator.serviceWorker?.register("/sw.js");
