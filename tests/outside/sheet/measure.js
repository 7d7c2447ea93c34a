// Put into a copy of the page: what it looks like in this browser, told to the page around it.
// Contrast by WCAG 2.2, "contrast ratio" and "relative luminance".
addEventListener("load", () => {
  const numbers = (text) => (text.match(/[\d.]+/g) || []).map(Number);
  const channel = (value) => {
    const share = value / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  };
  const luminance = ([red, green, blue]) =>
    0.2126 * channel(red) + 0.7152 * channel(green) + 0.0722 * channel(blue);
  const contrast = (one, other) => {
    const [low, high] = [luminance(one), luminance(other)].sort((a, b) => a - b);
    return (high + 0.05) / (low + 0.05);
  };
  const ground = (element) => {
    for (let each = element; each; each = each.parentElement) {
      const colour = numbers(getComputedStyle(each).backgroundColor);
      if (colour.length === 3 || colour[3] === 1) return colour;
    }
    return [255, 255, 255];
  };
  const found = { contrast: 99, font_px: 99, target: 999, texts: 0, pictures: 0 };
  const see = (style, element) => {
    found.contrast = Math.min(found.contrast, contrast(numbers(style.color), ground(element)));
    found.font_px = Math.min(found.font_px, parseFloat(style.fontSize));
  };
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    if (!node.data.trim() || node.parentElement.tagName === "SCRIPT") continue;
    found.texts += 1;
    see(getComputedStyle(node.parentElement), node.parentElement);
  }
  for (const each of document.querySelectorAll(".care, .beside")) {
    see(getComputedStyle(each, "::before"), each);
  }
  for (const each of document.querySelectorAll("a, label")) {
    found.target = Math.min(found.target, each.getBoundingClientRect().height);
  }
  for (const each of document.images) {
    if (each.complete && each.naturalWidth > 0 && each.getBoundingClientRect().height <= innerHeight)
      found.pictures += 1;
  }
  const root = document.documentElement;
  found.overflow = root.scrollWidth - root.clientWidth;
  found.width = innerWidth;
  found.dark = matchMedia("(prefers-color-scheme: dark)").matches;
  found.fetched = performance.getEntriesByType("resource").length;
  parent.postMessage(found, "*");
});
