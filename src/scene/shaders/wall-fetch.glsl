// The wall's grid, read texel by texel and mixed here: phones often lack linear filtering of float textures.
// A node coordinate is (column, row); whole numbers are the grid's own nodes, `columns` is the seam again.

uniform highp sampler2D wallTexture;  // [column, row]: x deviation µm, y cell hatched 0/1, z proven 0/1/2
uniform highp sampler2D towardTexture; // the same nodes of another wall, where this one is drawn on its way there
uniform float wallShare;              // of that way, 0 at the wall, 1 there
uniform highp sampler2D doubtTexture; // [column, row]: below firm, inside from, inside to, above firm, µm
uniform highp sampler2D gridTexture;  // row 0: angle of a column, rad, and x and z outward there, closed with
                                      // the seam; row 1: depth of a row, mm
uniform ivec2 gridSize;               // columns, rows

// The cell that holds a node coordinate: its first and next nodes and the share of the way between them.
struct Cell {
  ivec2 first;
  ivec2 next;
  vec2 share;
};

Cell cellAt(vec2 node) {
  ivec2 first = clamp(ivec2(floor(node)), ivec2(0), gridSize - ivec2(1, 2));
  return Cell(first, ivec2((first.x + 1) % gridSize.x, first.y + 1), node - vec2(first));
}

// A node of the wall as it is drawn: at either end of the way exactly that wall's own.
vec4 nodeAt(ivec2 at) {
  if (wallShare <= 0.0) return texelFetch(wallTexture, at, 0);
  vec4 there = texelFetch(towardTexture, at, 0);
  return wallShare >= 1.0 ? there : mix(texelFetch(wallTexture, at, 0), there, wallShare);
}

// Nobody measured what is drawn between two walls.
bool isBetween() {
  return wallShare > 0.0 && wallShare < 1.0;
}

// The four corners of a cell in one texture: upper first and next, lower first and next.
struct Corners {
  vec4 upperFirst, upperNext, lowerFirst, lowerNext;
};

Corners cornersIn(highp sampler2D source, Cell cell) {
  return Corners(
    texelFetch(source, cell.first, 0),
    texelFetch(source, ivec2(cell.next.x, cell.first.y), 0),
    texelFetch(source, ivec2(cell.first.x, cell.next.y), 0),
    texelFetch(source, cell.next, 0)
  );
}

Corners wallCornersIn(Cell cell) {
  return Corners(
    nodeAt(cell.first),
    nodeAt(ivec2(cell.next.x, cell.first.y)),
    nodeAt(ivec2(cell.first.x, cell.next.y)),
    nodeAt(cell.next)
  );
}

// Bilinear mix of the corners of a cell, in their units.
vec4 mixed(Corners corners, Cell cell) {
  return mix(
    mix(corners.upperFirst, corners.upperNext, cell.share.x),
    mix(corners.lowerFirst, corners.lowerNext, cell.share.x),
    cell.share.y
  );
}

// Angles of a cell's first and next column, rad, and depths of its first and next row, mm.
vec4 spanOf(Cell cell) {
  return vec4(
    texelFetch(gridTexture, ivec2(cell.first.x, 0), 0).x,
    texelFetch(gridTexture, ivec2(cell.first.x + 1, 0), 0).x,
    texelFetch(gridTexture, ivec2(cell.first.y, 1), 0).x,
    texelFetch(gridTexture, ivec2(cell.next.y, 1), 0).x
  );
}

