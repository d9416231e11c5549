// The wall's grid, read texel by texel and mixed here: phones often lack linear filtering of float textures.
// A node coordinate is (column, row); whole numbers are the grid's own nodes, `columns` is the seam again.

uniform highp sampler2D wallTexture;  // [column, row]: x deviation µm, y cell hatched 0/1, z proven 0/1/2
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

