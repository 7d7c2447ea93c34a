#pragma once

namespace quarterturn {

// By day and by night; contrast and focus by WCAG 2.2.
inline constexpr const char* gallery_style = R"(
:root{color-scheme:light dark;--paper:#fbf8f3;--ink:#2b2320;--soft:#5c5049;--accent:#8f3820}
@media (prefers-color-scheme:dark){:root{--paper:#16120f;--ink:#f5ede3;--soft:#cfc2b4;--accent:#ffb298}}
*{box-sizing:border-box}
html{font-size:112.5%;-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0;background:var(--paper);color:var(--ink);font-family:system-ui,sans-serif;line-height:1.45;overflow-wrap:anywhere}
header,main,footer{max-width:84rem;margin:0 auto;padding:0 1rem}
h1{font-size:2rem;line-height:1.15;margin:2rem 0 .3rem;font-weight:600}
h2{font-size:1.3rem;margin:0 0 1.2rem;font-weight:500;color:var(--soft)}
p{margin:.3rem 0}
ul{list-style:none;margin:0;padding:0;display:grid;gap:1.6rem 1.2rem;grid-template-columns:repeat(auto-fill,minmax(min(100%,20rem),1fr))}
figure{margin:0}
figure a{display:block}
img{display:block;width:100%;height:auto;border-radius:.2rem}
a:focus-visible{outline:3px solid var(--accent);outline-offset:3px}
figcaption{color:var(--soft);padding-top:.4rem}
footer{padding:2rem 1rem;color:var(--soft)}
)";

}  // namespace quarterturn
