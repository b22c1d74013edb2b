// Looks at a page as it is laid out, and says what is wrong with it, a line each; nothing where all is well.
(() => {
  const wrong = [];
  const wide = document.documentElement.scrollWidth;
  if (wide > window.innerWidth) wrong.push('scrolls sideways: ' + wide + ' of ' + window.innerWidth);
  document.querySelectorAll('figure').forEach((figure, place) => {
    const drawing = figure.querySelector('svg');
    if (!drawing) { wrong.push('figure ' + place + ' has no drawing'); return; }
    const told = part => (drawing.querySelector(part) || {textContent: ''}).textContent;
    const name = told('title') || 'figure ' + place;
    if (!told('title') || !told('desc')) wrong.push(name + ' is not told');
    if (!figure.querySelector('.says').textContent) wrong.push(name + ' does not say what to see');
    const frame = drawing.getBoundingClientRect();
    if (frame.width < 200 || frame.height < 60) wrong.push(name + ' is ' + frame.width + ' x ' + frame.height);
    const scale = frame.width / 400;
    const texts = [...drawing.querySelectorAll('text')].map(text => [text.textContent, text.getBoundingClientRect()]);
    const out = (box, by) => box.left < frame.left - by || box.right > frame.right + by
      || box.top < frame.top - by || box.bottom > frame.bottom + by;
    texts.forEach(([text, box], i) => {
      if (out(box, 0.5)) wrong.push(name + ': "' + text + '" is outside');
      texts.slice(0, i).forEach(([other, its]) => {
        if (box.left < its.right && its.left < box.right && box.top + scale < its.bottom && its.top + scale < box.bottom)
          wrong.push(name + ': "' + text + '" lies on "' + other + '"');
      });
    });
    drawing.querySelectorAll('path,rect').forEach(part => {
      if (!part.closest('pattern') && out(part.getBoundingClientRect(), 2)) wrong.push(name + ': a stroke is outside');
    });
  });
  const read = new Map();
  const channels = colour => {
    if (!read.has(colour)) read.set(colour, colour.match(/[\d.]+/g).map(Number));
    return read.get(colour);
  };
  const light = ([r, g, b]) => [r, g, b].map(c => c / 255)
    .map(c => c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4)
    .reduce((sum, c, i) => sum + c * [0.2126, 0.7152, 0.0722][i], 0);
  const grounds = new Map([[null, [255, 255, 255]]]);
  const ground = part => {
    if (!grounds.has(part)) {
      const colour = channels(getComputedStyle(part).backgroundColor);
      grounds.set(part, colour.length < 4 || colour[3] > 0 ? colour : ground(part.parentElement));
    }
    return grounds.get(part);
  };
  const seen = new Set();
  document.querySelectorAll('body *').forEach(part => {
    if (part.closest('pattern,title,desc,details:not([open]) > :not(summary)')) return;
    if (![...part.childNodes].some(child => child.nodeType === 3 && child.textContent.trim())) return;
    const style = getComputedStyle(part);
    const ink = channels(part.closest('svg') ? style.fill : style.color);
    const key = ink + ' on ' + ground(part);
    if (seen.has(key)) return;
    const pair = [light(ink), light(ground(part))].sort((a, b) => b - a);
    const contrast = (pair[0] + 0.05) / (pair[1] + 0.05);
    if (contrast < 4.5) wrong.push('contrast ' + contrast.toFixed(2) + ': ' + key + ', ' + part.textContent.slice(0, 40));
    seen.add(key);
  });
  return wrong.join('\n');
})()
