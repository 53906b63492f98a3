/** A plan of so many drawers, no two alike, so that every corner of each is drawn. */
export const chestOf = (count) => ({
  name: 'Bench',
  stock: {
    front: { thickness: 20, species: 'Cherry, black', grain: 'flatsawn' },
    side: { thickness: 11, species: 'Ash, white', grain: 'flatsawn' },
  },
  joint: { slope: '1:7', pin: 5, halfPin: 6, lap: 5 },
  groove: { offset: 11, width: 5, depth: 5 },
  drawers: Array.from({ length: count }, (_, i) => ({
    name: `Drawer ${i + 1}`,
    opening: { width: 280 + ((i * 37) % count) * (300 / count), height: 70 + i * (150 / count), depth: 420 },
  })),
});
