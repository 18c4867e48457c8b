# Labels, packages, containers, allergens: what a label says and what a package must hold.
# Words that a law demands stand word for word; the law is named before them.

## Net contents

# The form of 21 CFR 101.7(m): Net, ounces, the largest whole units, and the metric figure.
net-contents-in-ounces = Net { $ounces } ({ $metric })
net-contents-in-larger-units = Net { $ounces } ({ $larger }) { $metric }
net-contents-in-gallons = Net { $larger } ({ $metric })
net-contents-in-metric = { $metric } ({ $ounces })
net-from-labeled-size = { $net } (tamaño en etiqueta)
net-from-fill = { $net } (llenado, sin tamaño en etiqueta)

## Juice

# 21 CFR 101.30: these two statements stand word for word.
percent-juice = Contains { $percent }% juice.
less-than-one-percent-juice = Contains less than 1% juice.
no-juice = Sin jugo
juice-not-said = Falta: tipo de ingrediente de { $names }, como fruta cruda. Elíjalo en Compras.
name-with-juice = Con menos de 100% de jugo, un nombre con “juice” lleva también “drink” o “beverage” (21 CFR 102.33).
how-juice-is-counted = El porcentaje de jugo va por volumen, redondeado hacia abajo (21 CFR 101.30). El puré cuenta. Anote el concentrado ya mezclado: cuenta el jugo que rinde.

## Facts for a label

label-facts = Datos de etiqueta
label-facts-about = Datos para su etiqueta. Solo la advertencia está lista para imprimir.
label-facts-about-european = Datos para copiar en su etiqueta.
how-sold = Cómo se vende
has-a-fill-target = Este tamaño tiene meta de llenado, así que va envasado por adelantado. Primero quite la meta de llenado.
by-the-glass = Se vende por vaso, así que no lleva etiqueta. Use estos datos para el menú y para responder preguntas.
size-includes-ice = Incluye el hielo
thick = ¿Es espesa, o se come con cuchara? En Estados Unidos, ponga el peso, no el volumen (21 CFR 101.7(a)).
print-warnings = Imprimir advertencias
in-the-united-states = En Estados Unidos
in-the-eu-and-uk = En UE y Reino Unido
by-weight = En peso
also-needed = También hace falta
net-contents = Contenido neto
ingredients-heaviest-first = Ingredientes, de más a menos peso
ingredients-by-weight = Ingredientes en peso
juice = Jugo
storage = Conservación
storage-not-entered = Sin anotar. Siga su plan de seguridad de alimentos.
unit-price = Precio por unidad
unit-price-per = { $price } por { $unit } de contenido neto

# The list of ingredients, as a label has it (21 CFR 101.4).
water = water
fruit-juice = { $fruit } juice
juice-of = juice of { $name }

## What else a label needs

label-needs-name = El nombre del alimento, en el panel principal (21 CFR 101.3).
label-needs-address = El nombre y la dirección de su negocio (21 CFR 101.5).
label-needs-nutrition = Datos de nutrición (Nutrition Facts): aquí no se hacen. Algunos negocios chicos están exentos.
label-exempt-retailers = Exentas: tiendas que venden hasta ${ $sales } al año, o ${ $food } de alimentos (21 CFR 101.9(j)(1)).
label-exempt-by-notice = También exentos: negocios con menos de { $employees } empleados y menos de { $units } unidades al año. La FDA pide un aviso cada año (101.9(j)(18)).
label-claim-ends-exemption = Si la etiqueta promete algo de nutrición o salud, se pierde la exención.
label-needs-date = La fecha, y cómo guardar la bebida. Siga su plan de seguridad de alimentos y las reglas de su estado.
label-needs-deposit-mark = La marca de depósito, si su estado cobra depósito por envase.
label-needs-type-size = Tamaño y lugar de las letras: al menos 1/16 de pulgada (21 CFR 101.2(c), 101.7).
label-needs-name-european = El nombre del alimento (Regulation 1169/2011, Art. 17).
label-needs-address-european = El nombre y la dirección de su negocio (Art. 9(1)(h)).
label-needs-nutrition-european = Datos de nutrición: aquí no se hacen (Art. 30).
label-exempt-european = Exento: cantidades chicas, en venta directa o a tiendas locales (Annex V, 19).
label-needs-date-european = La fecha, y cómo guardar la bebida. Siga su plan de seguridad de alimentos.
label-needs-deposit-mark-european = La marca de depósito, si su país cobra depósito por envase.
label-needs-type-size-european = Tamaño de letra: al menos { $height } de alto, medido en una x (Art. 13(2)).

## Cautions

# 21 CFR 101.17(g)(2), word for word.
untreated-juice-warning = WARNING: This product has not been pasteurized and, therefore, may contain harmful bacteria that can cause serious illness in children, the elderly, and persons with weakened immune systems.
warning-sheet = Para envases de jugo sin tratar en Estados Unidos (21 CFR 101.17(g)). Ponga el recuadro en el panel de información o en el panel principal. Los códigos locales pueden pedir más.
untreated-packaged = Jugo sin tratar, envasado por adelantado. En Estados Unidos, la etiqueta debe llevar la advertencia del recuadro (21 CFR 101.17(g)). El puré y la fruta o verdura cruda licuada cuentan como jugo. Ponga el recuadro en el panel de información o en el panel principal. Deje WARNING en mayúsculas y negritas, con líneas finas alrededor del texto. Varios estados piden lo mismo para el jugo envasado en un local.
untreated-by-the-glass = Jugo sin tratar por vaso. La regla federal de etiquetas es solo para envases. Su estado o condado puede tener su propia regla: pregunte a su inspector local.
untreated-not-said = Jugo sin tratar. Si va envasado por adelantado, la etiqueta debe llevar la advertencia del recuadro (Estados Unidos, 21 CFR 101.17(g)). El puré y la fruta o verdura cruda licuada cuentan como jugo. Ponga el recuadro en el panel de información o en el panel principal. Deje WARNING en mayúsculas y negritas, con líneas finas alrededor del texto. Por vaso, la regla federal de etiquetas no aplica: pregunte a su inspector local. Elija arriba cómo se vende la bebida.
# No law is named in the European ones: hygiene rules ask for cold and a plan (Regulation (EC) No
# 852/2004, from memory).
untreated-european = Jugo sin tratar. Mantenga frío el jugo y siga su plan de seguridad de alimentos. Su autoridad local decide qué debe usted decir a los clientes.
no-warning-to-print = Su libro no tiene advertencia para imprimir. Su autoridad local decide qué debe decir la etiqueta.
fruit-not-said-packaged = Falta: tipo de ingrediente de { $names }. Si es fruta o verdura cruda, el envase debe llevar la advertencia del recuadro (EE. UU., 21 CFR 101.17(g)). Elíjalo en Compras.
fruit-not-said-by-the-glass = Falta: tipo de ingrediente de { $names }. Si es fruta o verdura cruda, la bebida cuenta como jugo sin tratar. Elíjalo en Compras.
at-risk = El jugo sin tratar puede enfermar gravemente a niños, personas mayores, embarazadas y personas con defensas bajas.
at-risk-places = El jugo envasado sin tratar no es para lugares que las atienden, como escuelas, hospitales y asilos.
at-risk-places-european = Escuelas, hospitales y asilos atienden a estas personas: pregunte a su autoridad local antes de vender ahí.
sold-to-a-business = En Estados Unidos, si le vende jugo a otro negocio, usted es procesador. Entonces todo su jugo necesita un plan HACCP y un tratamiento 5-log (21 CFR 120.3(l), 120.24). La advertencia en la etiqueta no los reemplaza. Algunos estados piden los dos con cualquier cantidad.
sold-to-a-business-european = ¿Le vende jugo a otro negocio? Puede haber más reglas: primero pregunte a su autoridad local.
low-acid-measured = Jugo de baja acidez: el pH es { $ph }, más de { $limit }.
low-acid-published = Este jugo puede ser de baja acidez, por su pH publicado: { $published }. Arriba de { $limit } es de baja acidez: mida la bebida.
acidity-not-known = No se conoce el pH de { $names }. Mida la bebida: arriba de { $limit } es de baja acidez.
keep-cold = El jugo de baja acidez se debe mantener refrigerado, tratado o no. Sin frío, el jugo puede causar botulismo, que puede matar (guía de la FDA para procesadores, junio de 2007).
keep-cold-european = El jugo de baja acidez se debe mantener refrigerado, tratado o no. Sin frío, el jugo puede causar botulismo, que puede matar.
ph-fda-list = { $name } { $least } a { $most } (lista de pH de la FDA)
ph-fda-handbook = { $name } { $least } a { $most } (manual de la FDA)
# The same two sources, for books under European law.
ph-american-list = { $name } { $least } a { $most } (lista de pH de EE. UU.)
ph-american-handbook = { $name } { $least } a { $most } (manual de EE. UU.)
ph-source-not-checked = { $name } { $least } a { $most } (fuente sin revisar)
fill-below-labeled-size = Al llenado le faltan { $short } para el tamaño en etiqueta. Llene más, o ponga menos: la etiqueta no puede decir más de lo que trae el envase.
name-the-nut = Diga qué nuez es, como almendra (almonds) o nuez de la India (cashews).
name-the-fish = Diga qué pescado es, como bacalao (cod).
name-the-crustacean = Diga qué crustáceo es, como camarón (shrimp).
name-the-grain = Diga qué grano con gluten es, como centeno (rye), cebada (barley) o avena (oats).
name-the-source = Diga de qué alimento viene el alérgeno.
allergens-as-entered = Los alérgenos salen de lo que usted anotó de cada ingrediente. Revise cada etiqueta, y qué más pasa por la licuadora o la prensa.
no-legal-advice = Estos números no son asesoría legal. Deciden los códigos locales y los profesionales con licencia.

## Why facts for a label are missing

no-density = La etiqueta lista los ingredientes en peso. Falta: densidad de { $name } en la bebida, en gramos por mL.
no-cup-weight = La etiqueta lista los ingredientes en peso. Falta: peso de una taza de { $name } en la bebida.
no-juice-cup-weight = La etiqueta lista los ingredientes en peso. Falta: peso de una taza de jugo de { $name }.
no-juice-density = La etiqueta lista los ingredientes en peso. Falta: densidad del jugo de { $name }, en gramos por mL.

## Safety and storage of a drink

safety-and-storage = Seguridad y conservación
safety-and-storage-about = Copie esto de su plan de seguridad de alimentos. Aquí nada se llena solo.
treatment = Tratamiento
measured-ph = pH medido
not-measured = sin medir
low-acid-above = Arriba de { $limit } es de baja acidez.
# Demanded of juice that must be kept cold (FDA guidance of June 2007; state food codes).
keep-refrigerated = Keep refrigerated (refrigerar)
keep-refrigerated-sentence = Keep refrigerated (mantener refrigerado).
use-within = Usar dentro de
days = días
not-entered = sin anotar
use-within-about = Días después de hacer la bebida. Escriba 0 para el mismo día.
use-by = Usar a más tardar el { $day }.
use-on-the-day = Usar el mismo día que se hace.
use-within-days = { $days ->
    [one] Usar dentro de 1 día después de hacerla.
   *[other] Usar dentro de los { $days } días después de hacerla.
}

## Allergens

# Plain names, for the card behind the counter and the chips of an ingredient.
wheat = Trigo
other-gluten = Gluten que no es de trigo
gluten-grains = Cereales con gluten
which-grains = ¿Qué cereales con gluten?
crustaceans = Mariscos (crustáceos)
eggs = Huevo
fish = Pescado
peanuts = Cacahuate
soy = Soya
milk = Leche
tree-nuts = Nueces de árbol
celery = Apio
mustard = Mostaza
sesame = Ajonjolí
lupin = Lupino
sulfites = Sulfitos
mollusks = Moluscos
sulfites-to-mark = Sulfitos, 10 ppm o más
sulfites-to-mark-european = Sulfitos, más de 10 mg/kg

# The nine of the United States, as 21 U.S.C. 321(qq) names them.
nine-wheat = Wheat
nine-crustaceans = Crustacean shellfish
nine-eggs = Egg
nine-fish = Fish
nine-peanuts = Peanuts
nine-soybeans = Soybeans
nine-milk = Milk
nine-tree-nuts = Tree nuts
nine-sesame = Sesame

# The fourteen of the European Union, as Regulation (EU) No 1169/2011, Annex II names them.
fourteen-wheat = Cereales con gluten (trigo)
fourteen-other-gluten = Cereales con gluten (que no es trigo)
fourteen-crustaceans = Crustáceos
fourteen-eggs = Huevo
fourteen-fish = Pescado
fourteen-peanuts = Cacahuate
fourteen-soybeans = Soya
fourteen-milk = Leche
fourteen-tree-nuts = Nueces de árbol
fourteen-celery = Apio
fourteen-mustard = Mostaza
fourteen-sesame = Semillas de ajonjolí
fourteen-sulfites = Dióxido de azufre y sulfitos
fourteen-lupin = Lupino
fourteen-mollusks = Moluscos

# Beside a name that does not say the allergen, in the list of ingredients (Art. 21(1)(b)).
beside-wheat = wheat
beside-other-gluten = cereal with gluten
beside-crustaceans = crustaceans
beside-eggs = egg
beside-fish = fish
beside-peanuts = peanuts
beside-soybeans = soya
beside-milk = milk
beside-tree-nuts = nuts
beside-celery = celery
beside-mustard = mustard
beside-sesame = sesame
beside-sulfites = sulphites
beside-lupin = lupin
beside-mollusks = molluscs

allergens = Alérgenos
allergens-nine = Alérgenos (EE. UU., 9)
allergens-fourteen = Alérgenos (UE y Reino Unido, 14)
# 21 U.S.C. 343(w)(1)(A): the word Contains stands word for word.
contains-on-label = Contains: { $allergens }
not-repeated = Van en mayúsculas en los ingredientes. La etiqueta no los repite como “Contains” (2017/C 428, 3.5).
other-allergens = Otros alérgenos
also-declare = Declare también
sulfites-to-declare = Sulfitos (sulfites), con 10 ppm o más en la bebida (21 CFR 101.100(a)(4)): { $names }
allergen-with-nuts = { $allergen }: { $nuts }
allergen-with-nuts-on-label = { $allergen } ({ $nuts })
allergen-with-ingredients = { $allergen } ({ $names })
none = Ninguno
none-marked-so-far = Ninguno marcado aún
marked-and-not-checked = { $allergens } · { $ingredients ->
    [one] 1 sin revisar
   *[other] { $ingredients } sin revisar
}
allergens-and-shared = { $allergens }. { $shared }
made-where-used = Se hace donde también se usa: { $allergens }.
others-not-checked = Usted también usa ingredientes sin revisar.
recipe-is-empty = La receta está vacía.
no-allergens = Ninguno de los alérgenos que se deben nombrar, según su libro.
contains = Contiene: { $allergens }.
contains-unlisted = Contiene: { $allergens } (no está en la lista de EE. UU.).
parts-not-known = Mezcla sin datos
parts-not-known-of = Puede contener más: { $names }
parts-not-known-sentence = Mezcla sin datos: { $names }. La bebida puede contener más alérgenos. Lea la etiqueta y anote los ingredientes.
allergen-not-marked = Alérgeno sin marcar
allergen-not-marked-of = Aparece en los ingredientes de { $names }
allergen-not-marked-sentence = Los ingredientes de una mezcla nombran un alérgeno sin marcar: { $names }. Marque el alérgeno.
allergens-not-checked = Alérgenos sin revisar
allergens-not-checked-of = Sin revisar: { $names }
allergens-not-checked-sentence = Falta revisar: { $names }. La bebida puede contener cualquier alérgeno. Revise cada etiqueta y marque lo que encuentre.
check-each = Abra un ingrediente para marcar sus alérgenos:

# What counts as a tree nut (FDA, January 2025; notice 2017/C 428).
tree-nuts-united-states = Estados Unidos, 12 nueces (FDA, enero de 2025). Almendra, nuez de Brasil, nuez de la India, avellana, macadamia, nuez pecana, piñón, pistache, nuez de Castilla. También nuez negra, nuez de California y heartnut. El coco, la castaña y el karité ya no cuentan.
tree-nuts-european = Unión Europea, 8 nueces y ninguna otra (2017/C 428). Almendra, nuez de Brasil, nuez de la India, avellana, macadamia, nuez pecana, pistache, nuez de Castilla. El piñón no cuenta en la UE.

allergens-about = Lea la etiqueta o pregunte al proveedor. Su libro solo sabe lo que dice esa etiqueta: revise cada entrega.
ingredient-not-checked = Sin revisar. Las bebidas con este ingrediente no pueden decir qué contienen.
ingredient-contains-none = No contiene ninguno de estos.
ingredient-contains = Contiene: { $allergens }.
allergens-it-contains = Alérgenos por marcar
other-answers = Otras respuestas
none-of-these = Ninguno de estos
not-checked = Sin revisar
which-nuts = Qué nueces
example-nuts = almonds, cashews
one-food-or-several = Simple o mezcla
mixture = Mezcla
mixture-such-as-granola = Mezcla, como granola
parts = Qué lleva la mezcla
parts-example = no se sabe
parts-about = Copie los ingredientes de la etiqueta. Luego marque arriba sus alérgenos. En blanco, ninguna bebida con esta mezcla dice “ninguno”.

## Fill target

this-size = Este tamaño
fill-target = Meta de llenado
fill-target-about = Para bebidas envasadas por adelantado, no hechas al momento. No es asesoría legal: deciden los códigos locales y lo que pese el inspector.
add-fill-target = Agregar meta de llenado
remove-fill-target = Quitar meta de llenado
fill-to = Llenar hasta
fill-to-means = En promedio, con la bebida a { $temperature }.
set-fill = Fijar llenado en { $fill }
set-fill-step = Fijar llenado
giveaway-per-package = Excedente por envase
giveaway-cost = Costo del excedente
giveaway-per-year = Excedente al año
giveaway-cost-per-year = Costo del excedente al año
current-fill = Llenado actual
labeled-size = Tamaño en etiqueta
labeled-size-as-measured = Tamaño en etiqueta ajustado
allowed-variation = Variación permitida
packages-weighed = Envases pesados
average-weighed = Promedio pesado
standard-deviation = Desviación estándar
fullest-package = Envase más lleno
room-in-container = Espacio en envase
rule = Regla de llenado
allowed-short-fills = Cortos permitidos
packages-per-batch = Envases por tanda
packages-per-batch-about = Los que llena de una vez.
not-known = no se sabe
short-batch-risk = Riesgo de tanda corta
room-for-closure = Espacio para tapa
look-up-variation = Busque la “maximum allowable variation” de este tamaño en NIST Handbook 133. No tenemos esa tabla.
sample-variation = Número de ejemplo, no del manual.
short-fills-in-germany = { $share } (Alemania, FPackV, sección 9)
short-fills-in-uk = { $share } (práctica del Reino Unido)
measured-at = Temperatura de la bebida
package-net-contents = Contenido neto del envase
add-weighing = Agregar pesada
weighings = Pesadas. Toque una para quitarla.
remove-weighing-of = Quitar pesada { $number }, { $net }
remove-weighing = Quitar pesada
counted-at = El contenido cuenta a { $counted }. Déjelo en blanco si midió a esa temperatura.
counted-where-measured = El contenido cuenta a { $counted }, la temperatura a la que usted midió.
counted-and-measured = El contenido cuenta a { $counted }. A esa temperatura el agua pesa { $density } g/mL, y { $other } a { $measured } (Metrologia 38, 2001). El jugo se expande un poco más.

# What a rule asks.
rule-average = El promedio debe llegar al tamaño en etiqueta. No conocemos una ley que pida solo esto.
rule-european = El promedio debe llegar al tamaño en etiqueta. Pocos envases pueden quedar cortos por la variación permitida, y ninguno por el doble (76/211/EEC, Annex I).
rule-united-states = El promedio debe llegar al tamaño en etiqueta. Ningún envase puede quedar corto por más de la variación permitida (NIST Handbook 133). La meta queda al menos 3 dispersiones arriba de eso.
small-batch = Con menos de 100 por tanda, los envases juntos deben promediar el tamaño en etiqueta (Reino Unido, SI 2006/659, Schedule 2, 4.7).
samples-at-share = Suponga que { $share } de los envases quedan cortos por más. Una muestra de 12 fallaría el { $few } de las veces. Una muestra de 24: { $many }.
samples-at-three-spreads = Con 3 dispersiones, una muestra de 12 falla cuando mucho el { $few } de las veces. Una muestra de 24: cuando mucho { $many }.

# Why a fill target is missing.
not-packaged-ahead = Este tamaño no va envasado por adelantado.
no-labeled-size = El envase no tiene tamaño en etiqueta. Escriba el tamaño de su etiqueta.
no-tolerance = La directiva no da variación permitida para menos de 5 mL ni más de 10 L. Elija otra regla.
no-allowed-variation = Falta: variación permitida. Busque la “maximum allowable variation” de este tamaño en NIST Handbook 133. Aquí no damos números de memoria.
no-weighings = Pese o mida lo que traen varios envases, y anote cada uno. Con dos se calcula la dispersión; con veinte sale bien (regla general, sin fuente publicada).
one-weighing = Un solo envase no da dispersión. Pese o mida al menos otro. Veinte dan una buena dispersión (regla general, sin fuente publicada).

# Cautions beside a fill target.
weighings-over-the-brim = { $weighings ->
    [one] 1 pesada es más de lo que cabe en el envase. Corrija ese número: mueve la meta.
   *[other] { $weighings } pesadas son más de lo que cabe en el envase. Corrija esos números: mueven la meta.
}
variation-too-large = La variación permitida, { $variation }, es tan grande como el tamaño mismo. Corrija ese número.
container-too-small = El envase es chico para su tamaño en etiqueta. Los envases más llenos necesitan { $room } más de espacio. Llene más parejo, declare menos o use un envase más grande.
spread-too-wide = A ningún envase le puede faltar el doble de la variación permitida. Con esta dispersión, le faltaría a más de 1 de cada { $packages }. Llene más parejo.
short-by-twice-the-tolerance = { $packages ->
    [one] 1 envase pesado queda corto por el doble de la variación permitida. Ninguno puede quedar así.
   *[other] { $packages } envases pesados quedan cortos por el doble de la variación permitida. Ninguno puede quedar así.
}
short-by-more-than-allowed = { $packages ->
    [one] 1 envase pesado queda corto por más de la variación permitida. Ninguno puede quedar así.
   *[other] { $packages } envases pesados quedan cortos por más de la variación permitida. Ninguno puede quedar así.
}
average-below-labeled-size = A los envases que pesó les faltan en promedio { $short } para el tamaño en etiqueta. Llene más.
few-weighings = { $weighings ->
    [one] Va 1 pesada. Veinte dan una buena dispersión (regla general, sin fuente publicada).
   *[other] Van { $weighings } pesadas. Veinte dan una buena dispersión (regla general, sin fuente publicada).
}
half-of-batches-short = Escriba los envases por tanda. Si llena al tamaño en etiqueta, la mitad de las tandas sale corta en promedio.
nothing-added-for-batch = Escriba los envases por tanda. Sin ese número, no se agrega nada para el promedio de la tanda.

## Containers

new-container = Envase nuevo
back-to-drink = Volver a la bebida
add-container = Agregar envase
add-container-step = Agregar envase
remove-container = Quitar envase
menu-name = Nombre en menú
example-container = Botella de 12 oz
packaging-about = Para una bebida: botella o vaso, tapa o tapón, etiqueta, popote.
no-containers = ¿En qué sirve sus bebidas?
no-containers-about = Agregue las botellas y los vasos en que vende. Cada uno tiene capacidad al ras, espacio libre y su empaque: tapa o tapón, etiqueta, popote.
container-fill = { $fill } de llenado, { $capacity } al ras
container-not-used = Sin usar todavía

## Fill and headspace of a container

headspace = Espacio libre
headspace-by = Espacio libre por
by-volume = Volumen
by-share = Parte de la capacidad
by-height = Altura bajo el borde
name-and-size-first = Primero escriba el nombre en menú, la capacidad al ras y el espacio libre.
labeled-size-about = El tamaño en su menú o etiqueta, si lo hay.
fill-line-above-base = Línea sobre la base
fill-line-below-rim = Línea bajo el borde
container-fill-below-labeled-size = Al llenado le faltan { $short } para el tamaño en etiqueta. Las reglas locales dicen cuánto debe traer ese tamaño.

# What standards allow (76/211/EEC, 75/107/EEC, OIML R 138).
standards-allow = Las normas permiten
standards-allow-about = Lo máximo, contra el tamaño en etiqueta. No es asesoría legal: las reglas locales deciden cuál vale, si alguna vale.
short-by = De menos
over-by = De más
no-limit = sin límite
nothing = nada
single-package = Un solo envase
measuring-bottle = Botella medidora, de fábrica
pouring-measure-to-line = Medida para servir, a su línea
pouring-measure-to-brim = Medida para servir, al ras
drinking-glass-to-line = Vaso o copa, a su línea
drinking-glass-to-brim = Vaso o copa, al ras
source-package = Directive 76/211/EEC, Annex I, 2.4. En promedio, no puede faltar nada.
source-bottle = Directive 75/107/EEC, Annex I
source-measures = OIML R 138, 5.1.1
