// Which pictures of the emoji set are used, by category: our name, and after = the set's own where it differs.
export const CHOSEN = {
  animals:
    'cat=cat-face dog rabbit=rabbit-face pig cow=cow-face elephant giraffe frog turtle snail fish whale crab butterfly ladybird=lady-beetle bee=honeybee duck owl penguin hedgehog snake mouse=mouse-face',
  food: 'apple=red-apple pear banana strawberry cherries grapes carrot ice-cream=soft-ice-cream cake=birthday-cake lollipop',
  things:
    'key umbrella bell balloon teddy=teddy-bear scissors pencil teapot house ball=soccer-ball clock=alarm-clock glasses shirt=t-shirt crown kite bed chair',
  vehicles:
    'car=automobile bus fire-engine bicycle plane=airplane sailing-boat=sailboat train=locomotive tractor helicopter rocket',
  plants:
    'tulip sunflower cactus palm-tree tree=deciduous-tree fir-tree=evergreen-tree maple-leaf clover=four-leaf-clover mushroom',
};
