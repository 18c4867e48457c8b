# Datos iniciales: lo que la aplicación trae antes de pesar, y cómo el dueño los hace suyos.

## Mientras se escribe un nombre

suggestions = Sugerencias
suggestions-found = { $rows ->
    [one] 1 sugerencia
   *[other] { $rows } sugerencias
}
missing = No se cargaron las sugerencias. Escriba todo usted, o intente más tarde.
trim-left = rendimiento limpio { $share }
juice-left = rendimiento de jugo { $share }
piece-weighs = { $weight } por pieza
weighs = { $density }
juice-weighs = jugo { $density }
name-only = solo el nombre
fill-from = Datos iniciales: { $name }
fill-about = Llena solo lo que sigue en blanco: { $figures }.
use-figures = Usar estos datos

## Junto a un dato

confirm = Confirmar
undo = Deshacer
unconfirm-step = Deshacer confirmación
undo-confirm = Deshacer: { $figure }
confirmed = Confirmado
confirm-named = Confirmar { $figure }
confirm-step = Confirmar dato inicial
from-sr28 = De USDA SR28 (2015).
from-sr28-item = De USDA SR28 (2015), alimento { $number }.
assumed = Supuesto: usual en ingredientes así.
rule-of-thumb = Regla del oficio, sin fuente publicada. Pese lo suyo.
usual-capacity = Usual para este tamaño. Pese el suyo lleno de agua.
confirmed-by = Confirme un dato, o abra su artículo y escriba el suyo.

## Lo que se ofrece junto a los datos

usually-contains = Suele contener: { $allergens }. Lea la etiqueta.
can-contain = Puede contener: { $allergens }. Lea la etiqueta.
contains-it = Contiene: { $allergens }
spoon-weight = Medido con cuchara: { $density }. En la bebida, el polvo ocupa menos.
use-spoon-weight = Usar para volumen
other-trim-yield = Este peso por pieza va con un rendimiento limpio de { $list }. El suyo es { $own }. Pese unas piezas.
trimmed-piece = Una pieza suele pesar { $list } al comprarla. ¿Pesó { $own } ya en limpio?
usual-case = Caja usual en EE. UU.: { $size }. Revise la suya.

## Botellas y vasos usuales

usual-sizes = Tamaños usuales
usual-sizes-about = Las capacidades son las usuales. Pese los suyos llenos de agua.
bottle-of = Botella de { $size }
cup-of = Vaso de { $size }
holds = caben { $capacity }
other-units = Otras unidades

## Datos por revisar

figures-to-check = Datos por revisar
figures-of = Datos por revisar: { $figures }
most-first = Primero lo que más mueve, si el dato baja { $share }.
figure-and-value = { $figure }: { $value }
costs-more-per-week = cuesta { $money } más por semana
costs-less-per-week = cuesta { $money } menos por semana
costs-more-per-drink = cuesta { $money } más por bebida
costs-less-per-drink = cuesta { $money } menos por bebida
moves-nothing = aún no mueve nada
no-effect-yet = { $figures ->
    [one] 1 aún no mueve nada
   *[other] { $figures } aún no mueven nada
}
none-left = Todos los datos son suyos. Nada por revisar.
figure-of = { $figure } de { $name }
