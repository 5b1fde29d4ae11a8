### What is read aloud to those who do not see a page: grids, pictures, links, and the editions in text and for braille.

row-numbered = рядок { $number }
column-numbered = стовпець { $number }
cell-given = задано { $digit }
cell-empty = порожня
# Between overlapping grids.
cell-none = немає клітинки
cell-candidates = { $n ->
    [1] кандидат { $digits }
   *[other] кандидати { $digits }
}
# A cell to fill, in a table read aloud.
blank = порожньо
row-digits = Рядок { $number }: { $digits }
row-holds = рядок { $number } містить { $digits }
cell-at = рядок { $row } стовпець { $column }
    .short = р{ $row } с{ $column }
cell-shaded = Затінена клітинка: { $cell }.
check-cells = Клітинки контрольного рядка: { $cells }.
profile-of = Профіль розв’язування, { $n ->
    [one] { $n } момент
    [few] { $n } моменти
   *[other] { $n } моментів
}
profile-narrow = Профіль розв’язування, { $n ->
    [one] { $n } момент
    [few] { $n } моменти
   *[other] { $n } моментів
}, { COUNT($at) ->
    [1] вузьке місце: момент { $at }
   *[other] вузькі місця: моменти { $at }
}
sample-of = Зразок: { $kind }
code-of-link = Код посилання { $link }
link-of-puzzle = Посилання на цю головоломку: { $link }
look-at = Дивіться сюди: { $cells }
look-along = Дивіться вздовж: { $cells }
filled-next = Наступний запис: { $cell }
eliminated = Викреслено { $digit }: { $cells }
supposed = Припущено { $digits }: { $cell }
in-round = У колі { $round }, { $digits }: { $cell }
field-at = Рядок { $row }, стовпець { $column }
bands-counted = Головоломки за складністю: { $counts }.
band-count = { $band } { $count }
sample-grid = зразкова сітка
tear-off-edge = відривний край
cover-art = малюнок обкладинки

## Web page and e-book

skip-to-book = Перейти до книжки
table-of-key = Розв’язок головоломки { $number }, цифри
table-of-puzzle = Головоломка { $number }, цифри
head-row = Рядок { $number }
head-column = Стовпець { $number }
cover = Обкладинка
cover-of = Обкладинка: { $title }
title-page = Титульна сторінка
puzzles = Головоломки
printed-pages = Сторінки друкованого видання
landmarks = Орієнтири
grid-in-words = Сітка словами
grid-as-table = Сітка як таблиця
picture-told-in-words = Сітка головоломки { $number }, подана нижче словами і як таблиця
picture-told-as-table = Сітка головоломки { $number }, подана нижче як таблиця
subject = Головоломки з розміщенням цифр
accessibility = Кожну сітку подано малюнком і таблицею із заголовками рядків і стовпців. Позначки кожної головоломки поруч описано словами, тож усі головоломки можна розв’язати, не бачачи малюнка. Підказки відкриваються по одній, а посилання ведуть від кожної головоломки до її підказок і розв’язку та назад.

## The edition for braille displays

# р and с are what rows and columns are shortened to here, and in all attributes “short”, which are for braille.
braille-legend = Рядки тексту мають щонайбільше { $cells } знаків; кожен займає одну комірку комп’ютерного брайля. Продовження рядка подано з відступом. У сітці кожен знак є клітинкою, крапка — порожньою{ $boxes ->
    [yes] ; пропуски відділяють блоки
   *[no] {""}
}. р означає рядок, с — стовпець: р2 с3 — клітинка в рядку 2 і стовпці 3, а р2 с3-5 — три клітинки від неї до стовпця 5.
