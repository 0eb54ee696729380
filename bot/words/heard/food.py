"""Food and drink, in or on which a word that a horse is called as well is what it says: "arroz con canela".

As `tokens` writes them, without accents. Some mean something else as well, and stand in a table for that.
"""

_FOOD = """
    mate cafe te caldo sopa atole arroz chocolate leche azucar galletas bizcocho natillas torrijas churros manzana
    manzanas compota tarta pastel helado yogur tostada tostadas pan vino cerveza ron guiso estofado postre merienda
    sirope jarabe cordero pollo cerdo ternera lentejas garbanzos paella tortilla ensalada asado empanada receta
    queso flan torrija infusion bunuelos rosquillas magdalena magdalenas batido
    coffee tea soup cake pie pudding custard porridge toast bread milk cream yoghurt yogurt latte cappuccino smoothie
    lamb chicken pork beef roast recipe gravy salad muffin muffins brownie brownies scone scones biscuits cookie cookies
    syrup stew curry sandwich sauce icing wine beer cider cocktail crumble trifle flapjack
    chocolat gateau tarte crepe crepes lait creme pain soupe yaourt vin biere tisane riz gaufre gaufres patisserie
    agneau poulet porc boeuf roti recette salade ragout
    sirop dessert gouter potage bouillon mousse
"""
FOOD = frozenset(_FOOD.split())
