### La lista de trabajos, la papelera, trabajos que viajan.

jobs-title = Trabajos
jobs-search = Buscar
jobs-search-hint = Matrícula, vehículo, pieza o diagnóstico
jobs-new = Trabajo nuevo
jobs-open = Abrir
jobs-bin = Echar a la papelera
jobs-unnamed = Vehículo sin nombre
jobs-none = Aún no hay trabajos. Empieza uno: toca Trabajo nuevo.
jobs-none-found = Ningún trabajo tiene estas palabras.
job-begun = Empezado
job-open = En curso
job-closed = Cerrado
job-repaired = Reparado
jobs-narrow = Acotar
jobs-widen = Mostrar todos
jobs-shelf = Cuáles
jobs-shelf-all = Todos
jobs-shelf-open = En curso
jobs-shelf-closed = Cerrados
jobs-shelf-bin = En la papelera
jobs-time = Tocados
jobs-time-any = Cuando sea
jobs-time-week = Últimos 7 días
jobs-time-month = Últimos 31 días
jobs-time-year = Último año
jobs-time-between = Entre dos días
jobs-from = Desde
jobs-until = Hasta
jobs-date-hint = 2026-03-14, o un mes, 2026-03
jobs-date-problem = Escribe primero el año, como 2026-03-14.
jobs-more = Mostrar más
jobs-customer = { $name }.
jobs-duplicate = Trabajo nuevo con este vehículo
jobs-pick = Escoger
jobs-select = Escoger trabajos
jobs-select-none = No escoger ninguno
jobs-none-picked = Toca primero los trabajos.
jobs-export-picked = { $count ->
    [0] Exportar trabajos
    [one] Exportar 1 trabajo
   *[other] Exportar { $count } trabajos
}
jobs-export-all = Exportar todo el registro
jobs-import = Tomar trabajos de un archivo
jobs-empty-bin = Vaciar la papelera
jobs-bin-empty = La papelera está vacía.
notice-empty-bin = Los trabajos de la papelera y sus fotos se borrarán para siempre.
notice-empty-bin-yes = Borrar para siempre
notice-empty-bin-no = Conservarlos
notice-bin-emptied = La papelera está vacía. Sus trabajos ya no existen.

log-export = Exportar este trabajo

bundle-file-title = Trabajos
bundle-packing = Se están empaquetando los trabajos.
bundle-taking-in = Se están tomando los trabajos.
bundle-stopped = Parado. Lo ya tomado se queda.
bundle-took = { $count ->
    [one] 1 trabajo tiene algo nuevo.
   *[other] { $count } trabajos tienen algo nuevo.
}
bundle-took-nothing = No traía nada nuevo.
bundle-left-out = { $count ->
    [one] 1 entrada quedó fuera: difiere de la de aquí.
   *[other] { $count } entradas quedaron fuera: difieren de las de aquí.
}
bundle-broken-photos = { $count ->
    [one] 1 foto no se puede leer.
   *[other] { $count } fotos no se pueden leer.
}
bundle-deleted = { $count ->
    [one] 1 trabajo se borró aquí y sigue fuera.
   *[other] { $count } trabajos se borraron aquí y siguen fuera.
}
bundle-take-again = Tomarlos de nuevo
problem-bundle-none = Este archivo no contiene trabajos.
problem-bundle-newer = Este archivo es de una versión más nueva. Actualiza la app y tómalo después.
problem-bundle-cut = Este archivo acaba demasiado pronto. Envíalo otra vez.
problem-bundle-damaged = Este archivo está dañado. No se tomó nada de él.
problem-bundle-file = Este archivo no se puede leer.
