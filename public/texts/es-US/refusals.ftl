# Why a change is refused, what changed in another tab, and the names of fields.

## Records

the-settings = los ajustes
the-buying-list = la lista de compras
# Alone, or at the beginning of a sentence.
buying-list = La lista de compras
settings = Ajustes
and-list = { $before } y { $last }

## Why a change is refused

no-longer-in-the-book = Ya no está en su libro: { $kind }. Deshaga el cambio o regrese.
needs-first = Falta para { $user }: { $needed }. Agregue eso primero.
in-use = { $name } se usa en { $users }. Primero cambie o quite { $name } ahí.
in-use-and-more = { $name } se usa en { $users } y { $more } más. Primero cambie o quite { $name } ahí.
choose-replacement = Elija primero con qué reemplazar.

blank = { $field }: no hay nada escrito. Escriba al menos una letra.
too-long = { $field }: más de 80 letras. Acorte el texto.
too-long-for-label = { $field }: más de 400 letras. Acorte el texto.
not-positive = { $field }: debe ser mayor que cero. Escriba un número, como 12.
negative = { $field }: no puede ser menor que cero. Quite el signo de menos.
not-a-yield = { $field }: debe ser más de 0% y cuando mucho 100%. Escriba 90 si queda el 90%.
not-a-share = { $field }: debe ser al menos 0% y menos de 100%. Escriba 5 para 5%.
not-a-part = { $field }: debe ser al menos 0% y cuando mucho 100%. Escriba 10 si se derrite el 10%.
two-rates = { $field }: un tipo de bebida tiene dos tasas. Deje una.
not-a-volume = { $field }: debe ser un volumen, como 16 fl oz o 500 mL.
not-a-count = { $field }: debe ser un número de piezas, como 250 pza.
nothing-fits = { $field }: no deja espacio para la bebida. Escriba menos.
more-than-brimful = { $field }: no cabe en el envase. Revise la capacidad al ras.
less-than-one = { $field }: debe ser al menos 1. Escriba un número, como 12.
not-an-ending = { $field }: cada una debe ser menor que uno, como { $example } (menor que 100 sin centavos).
too-large = { $field }: demasiados dígitos para calcular. Revise si sobra alguno.
no-heights = { $field }: una altura necesita medidas. Primero mida el vaso, o anote lecturas de la botella.
too-few = { $field }: con una no basta. Una botella necesita al menos dos, la última en el borde.
falls = { $field } { $number }: debe estar más arriba y contener más que la anterior. Mida otra vez.
not-above-one = { $field }: debe ser mayor que 1. Escriba arriba el precio de un paquete.
another-kind = { $field }: mida igual que la cantidad: peso con peso, piezas con piezas.
more-than-one = { $field }: solo un ingrediente puede hacer eso. Cambie primero el otro.
neither-weight-nor-volume = { $field }: debe ser un peso o un volumen, como { $volume } o { $weight }.
not-a-packing = { $field }: debe ser más de 0% y cuando mucho 100%. El hielo suelto llena de 54% a 67%: escriba 60.
not-a-monday = { $field }: debe empezar en lunes. Elija el lunes.
not-after = { $field }: debe ir después de las semanas de antes. Elija una semana posterior.
not-a-weight = { $field }: debe ser un peso, como 5 lb o 2 kg.
more-than-before = { $field }: más que el peso anterior. Limpiar y prensar no agregan peso: pese otra vez.
not-whole = { $field }: debe ser un número entero, como 12.
not-a-ph = { $field }: debe estar entre 1 y 14. Escriba lo que marca su medidor, como { $example }, o déjelo en blanco.
not-measured-there = { $field }: debe ser de 32 a 104 °F (0 a 40 °C), donde se conoce la densidad del agua.
too-many-days = { $field }: 730 cuando mucho. Revise si sobra un dígito.
listed-twice = { $field }: lo mismo está dos veces. Deje uno.

## Steps that can be undone

undo-step = Deshacer: { $step }
undone = Deshecho: “{ $step }”.
redone = Rehecho: “{ $step }”.
not-undone = No se deshizo: “{ $step }”. { $why }
not-redone = No se rehízo: “{ $step }”. { $why }
step-values = { $field }: antes { $was }, ahora { $now }
step-and-time = { $step }, { $when }
undo-first = Primero deshaga esto: { $steps }
undo-first-and-more = Primero deshaga esto: { $steps }; y { $more } más.
too-large-to-keep = Es demasiado grande para guardarlo. Puede deshacerlo hasta que salga de esta página.
already-undone = Ya no hay nada que deshacer en { $step }. Otra pestaña ya lo hizo.
already-redone = Ya no hay nada que rehacer en { $step }. Otra pestaña ya lo hizo.

changed-since-gone = Esto ya no está en su libro. Lo quitó un cambio posterior u otra pestaña.
changed-since-record = { $name } cambió desde entonces. Haga este cambio a mano.
changed-since-to = { $name }, { $field }: ahora { $value }, por un cambio posterior o de otra pestaña.
changed-since-removed = { $name }, { $field }: se quitó después.
changed-since-form = { $name }, { $field }: cambió después.
other-fields = { $fields ->
    [one] Cambió también 1 campo más.
   *[other] Cambiaron también { $fields } campos más.
}
change-by-hand = Haga este cambio a mano.
changes-by-hand = Haga estos cambios a mano.

## What another tab did

take-theirs = Aceptar lo otro: { $step }
keep-mine = Conservar lo mío: { $step }
unlock-to-decide = Desbloquee este dispositivo para decidir.
conflict-of-several = 1 de { $count }: { $said }
conflict = “{ $step }” no se guardó. { $did } { $then }
another-tab-changed = Otra pestaña también cambió { $name }.
another-tab-changed-deleted = Otra pestaña cambió { $name }, que usted borró.
another-tab-deleted = Borrado en otra pestaña: { $names }.
another-tab-uses = Otra pestaña usa { $name } en { $users }.
another-tab-changed-to = Otra pestaña también cambió { $name }, { $field }: ahora { $theirs }. Lo suyo es { $mine }.
another-tab-removed = Otra pestaña también cambió { $name }. Quitó: { $field }.
another-tab-changed-field = Otra pestaña también cambió { $name }: { $field }.
keep-or-take = Conserve lo suyo o acepte lo otro.
keep-one-back-or-take = Conserve lo suyo para recuperarlo, o acepte lo otro.
keep-several-back-or-take = Conserve lo suyo para recuperarlos, o acepte lo otro.
does-not-fit = Lo suyo no va con ese cambio. Arregle eso primero y luego conserve lo suyo. O acepte lo otro.

## Names of fields

no-value = en blanco
some-field = Un campo
price-date = Fecha del precio
earlier-price = Precio anterior
volume-pricing = Precio por mayoreo
weighings = Pesadas
count-date = Fecha del conteo
reading = Lectura
fill-to-the-line = Llenar hasta la línea
register-column = Columna de caja
register-columns = Columnas de caja
week = Semana
sales = Ventas
date = Fecha
menu = Menú
drinks = Bebidas
filled = Llenado
from-the-shelf = Descontado del inventario
ready = Marcado
packs-to-buy = Paquetes por comprar
price-paid = Precio pagado
shopping-lines = Artículos
yes = sí
no = no
