// What libraries of another time added to every object, list and element, where `for … in` finds it.
Object.prototype.extend = function extend(more) {
  return Object.assign(this, more);
};
Array.prototype.each = function each(visit) {
  for (const item of this) visit(item);
};
// Not `Array.prototype.toJSON`, as of 2008: with it no list is written right by anybody, nor read by the reader of messages.
String.prototype.strip = function strip() {
  return this.trim();
};
Function.prototype.defer = function defer() {
  return setTimeout(this, 0);
};
Element.prototype.hide = function hide() {
  this.remove();
};
Element.prototype.update = function update() {
  throw new Error('Element.prototype.update was called.');
};
Element.prototype.show = Element.prototype.move = Element.prototype.model = 'taken';
NodeList.prototype.map = Array.prototype.map;
