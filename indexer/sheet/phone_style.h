#pragma once

namespace quarterturn {

// Ink on paper with one warm accent, as on screen, and the same at night. No text is smaller than
// 17 px, nothing to press lower than 44 px; nothing hangs on colour.
inline constexpr const char* phone_style = R"(
:root{color-scheme:light dark;--paper:#fbf8f3;--card:#ffffff;--ink:#2b2320;--soft:#5c5049;--line:#8a7d73;--accent:#8f3820}
@media (prefers-color-scheme:dark){:root{--paper:#16120f;--card:#211b17;--ink:#f5ede3;--soft:#cfc2b4;--line:#8f8276;--accent:#ffb298}}
*{box-sizing:border-box}
html{font-size:112.5%;-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0;background:var(--paper);color:var(--ink);font-family:system-ui,sans-serif;line-height:1.45;overflow-wrap:anywhere}
header,main,footer{max-width:46rem;margin:0 auto;padding:0 1rem}
h1{font-size:1.5rem;line-height:1.2;margin:1.2rem 0 .3rem}
h2{font-size:2rem;line-height:1.15;margin:0 0 .2rem}
h3{font-size:1.3rem;line-height:1.25;margin:1.4rem 0 .4rem}
h4{font-size:1.1rem;margin:1.2rem 0 .3rem}
p,ul,ol,dl{margin:.4rem 0}
.soft{color:var(--soft)}
.whose{border:2px solid var(--line);border-radius:.5rem;padding:.6rem .8rem;background:var(--card)}
nav ol{list-style:none;padding:0;margin:1rem 0}
nav a{display:flex;flex-wrap:wrap;justify-content:space-between;gap:0 1rem;align-items:center;min-height:3rem;padding:.4rem .8rem;margin:.4rem 0;border:2px solid var(--line);border-radius:.5rem;color:var(--ink);background:var(--card);text-decoration:none;font-weight:600}
.ways ul{list-style:none;padding:0;display:grid;grid-template-columns:repeat(auto-fit,minmax(8.5rem,1fr));gap:.5rem;margin:.8rem 0}
.ways a{justify-content:flex-start;min-height:2.75rem;height:100%;margin:0;padding:.2rem .8rem;border:2px solid var(--line);border-radius:.5rem;color:var(--ink);background:var(--card);font-weight:600}
.angles,h4,section{scroll-margin-top:.5rem}
a:focus-visible,input:focus-visible,.angles:focus-visible{outline:3px solid var(--accent);outline-offset:3px}
article{border-top:.3rem solid var(--ink);margin:2rem 0 0;padding:1rem 0 0;scroll-margin-top:.5rem}
.ready{font-size:1.5rem;font-weight:700}
.care,.beside{position:relative}
.care{border:3px solid var(--accent);border-radius:.5rem;padding-block:.6rem;padding-inline:3.2rem .8rem;margin:.8rem 0;background:var(--card)}
.care h3{margin:0 0 .2rem;color:var(--accent)}
.care ul,.beside{list-style:none;padding:0;margin:0}
.care li,.beside li{font-weight:600}
.care li+li,.beside li+li{margin-top:.35rem}
.care::before,.beside::before{content:"!";position:absolute;inset-inline-start:0;top:.1em;width:1.25em;line-height:1.25em;text-align:center;border:2px solid var(--accent);border-radius:.2em;color:var(--accent);font-weight:800}
.care::before{inset-inline-start:.7rem;top:.7rem;font-size:1.3rem}
.angles{display:flex;gap:.75rem;overflow-x:auto;scroll-snap-type:x mandatory;overscroll-behavior-x:contain;margin:.8rem -1rem;padding:0 1rem .6rem;scroll-padding-inline:1rem}
figure{flex:0 0 auto;margin:0;scroll-snap-align:center;max-width:84vw}
figure img{display:block;width:auto;height:auto;max-width:100%;max-height:78vh;max-height:78svh;border-radius:.5rem;background:var(--card)}
figcaption{text-align:center;font-weight:700;padding-top:.3rem}
.empty{display:flex;align-items:center;width:60vw;max-width:20rem;min-height:12rem;padding:1rem;border:2px dashed var(--line);border-radius:.5rem;color:var(--soft)}
.steps{list-style:none;padding:0}
.steps>li{border-top:2px solid var(--line);padding:.6rem 0}
.steps label{display:grid;grid-template-columns:2.75rem 1fr;gap:.6rem;align-items:start;min-height:2.75rem;font-size:1.15rem}
.steps input{width:2.4rem;height:2.4rem;margin:.15rem .1rem;accent-color:var(--accent);border-radius:.2rem;box-shadow:0 0 0 2px var(--soft)}
.count{display:block;font-weight:700}
.beside{margin:.4rem 0 .6rem;padding-inline-start:1.9rem}
.steps .beside{margin-inline-start:3.35rem}
dt{font-weight:700;margin-top:.6rem}
dd{margin:0}
.head{fill:none;stroke:currentColor;display:block;width:13rem;max-width:100%;height:auto;margin:.6rem auto}
.head .mark{fill:var(--paper)}
.head text{fill:currentColor;stroke:none}
.accessory{border-inline-start:.4rem solid var(--accent);padding-inline-start:.7rem}
footer{margin-top:2.5rem;padding-bottom:2rem;border-top:2px solid var(--line)}
@media (prefers-reduced-motion:no-preference){html,.angles{scroll-behavior:smooth}}
@media print{.angles{flex-wrap:wrap;overflow:visible}figure{max-width:45%}}
)";

}  // namespace quarterturn
