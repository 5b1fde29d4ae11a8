### The book's own words: headings, the page on how to read it, what stands around puzzles, keys and hints. The reader is
### addressed politely, in the plural (“заповніть”); a cell is “клітинка”, a grid “сітка”, a box “блок”.

## Headings

heading-contents = Зміст
heading-foreword = Передмова
heading-guide = Як читати цю книжку
heading-text-guide = Як читати це видання
heading-primer = Абетка правил: одне за одним
heading-hints = Підказки
heading-glossary = Слова з підказок
heading-times = Час розв’язування
heading-latin = Латинські квадрати
heading-zero = Цифри від 0
heading-keys = Розв’язки
heading-answer-key = Відповіді
heading-credits = Джерела
heading-index = Покажчик
heading-imprint = Вихідні дані
heading-notes = Нотатки
heading-by-setter = За авторами
heading-by-rule = За правилами
# A title with what follows from it: “Lanterns: Answer key”.
titled = { $title }: { $what }
chapter-titled = Розділ { $number }: { $title }

## The five bands of difficulty, gentlest first

band-1 = Прогулянка
band-2 = Мандрівка
band-3 = Похід
band-4 = Сходження
band-5 = Вершина

## How to read the book

cell-names = Клітинки позначаємо рядком (r) і стовпцем (c): r5c2 лежить у рядку 5 і стовпці 2.
houses-explained = Група — це рядок, стовпець{ $areas ->
    [boxes] , блок чи область
    [regions] , область
   *[none] {""}
} або будь-який інший набір клітинок, у якому жодна цифра не повторюється.
guide-ridge = Гряда з п’яти вершин біля кожної назви показує, наскільки важка головоломка. Вона заповнюється зліва, вершина за вершиною, від рівня «{ $first }» до рівня «{ $last }». Число біля неї — складність: цифра до коми означає кількість вершин, а цифра після коми — наскільки близька наступна.
guide-order-difficulty = Головоломки впорядковано за складністю, від найлегшої.
guide-order-listed = Головоломки йдуть у порядку, який обрав редактор.
guide-order-chapters = Головоломки зібрано в розділи, у кожному — від найлегшої.
guide-rules = Правила, подані біля сітки, повні й діють усі разом. Кожен вид позначки ще раз намальовано біля речення, яке її пояснює. Сітки розраховано на олівець: писати можна поверх будь-якої позначки.
guide-rules-shared = Правила, подані біля сітки та на початку її розділу, повні й діють усі разом. Кожен вид позначки ще раз намальовано біля речення, яке її пояснює. Сітки розраховано на олівець: писати можна поверх будь-якої позначки.
guide-large = У найбільших сітках після цифри 9 ідуть літери: A означає 10, B означає 11 і так далі. Літер I та O немає, бо вони схожі на 1 і 0.
guide-proved = Кожна головоломка має рівно один розв’язок: перед друком перебрано всі можливості, а потім розв’язок звірено з правилами.
guide-draft = Це чернетка: головоломка в ній може не мати розв’язку або мати кілька.
guide-hints = Якщо застрягнете, перед розв’язками є по три підказки до кожної головоломки: куди дивитися, чого шукати і яким буде наступний крок.
guide-hints-in-pad = Якщо застрягнете, після останнього аркуша є по три підказки до кожної головоломки: куди дивитися, чого шукати і яким буде наступний крок.
guide-keys = Розв’язки — наприкінці, задані цифри в них виділено жирним шрифтом.
guide-keys-in-pad = Розв’язки — на звороті аркушів, задані цифри в них виділено жирним шрифтом.
guide-profile = Лінія під розв’язком показує хід роботи: вона підіймається там, де крок важче знайти, а вістря стрілок позначають місця, де легко застрягнути.
guide-credits = Після розв’язків подано джерела: коли головоломки з’явилися вперше і хто дав дозвіл.
guide-credits-in-pad = Наприкінці подано джерела: коли головоломки з’явилися вперше і хто дав дозвіл.
guide-text-marks = Рядки пронумеровано згори вниз, стовпці зліва направо; «порожньо» означає клітинку, яку треба заповнити. Коли рядки й стовпці названо разом, ідеться про всі клітинки на їхньому перетині; клітинки лінії названо в її порядку, тому номери стовпців чи рядків можуть спадати.
guide-text-below = Під кожним правилом подано його позначки.
guide-text-pictured = Під малюнком кожну сітку подано ще раз, словами й таблицею, які можна розгорнути.
guide-text-bands = Кожна головоломка має рівень складності, від найлегшого ({ $first }) до найважчого ({ $last }). Складність — це число: цифра до коми означає рівень, а цифра після коми — наскільки близький наступний.

## What a grid asks

grid-asks = Заповніть сітку так, щоб { $houses ->
    [lines] у кожному рядку й кожному стовпці
    [boxes] у кожному рядку, кожному стовпці й кожному блоці
   *[regions] у кожному рядку, кожному стовпці й кожній обведеній області
} по одному разу стояли { $symbols }.
# The same where several grids overlap.
grids-ask = Заповніть усі сітки так, щоб у кожній з них у кожному рядку, кожному стовпці й кожному блоці по одному разу стояли { $symbols }. Клітинка, спільна для кількох сіток, враховується в кожній із них.
holes-stand = Чорні клітинки лишаються порожніми.
# “1 to 9”, kept on one line.
symbols-digits = цифри від { $low } до { $high }
symbols-and-letter = цифри від { $low } до { $high } і літера { $last }
symbols-and-two-letters = цифри від { $low } до { $high } і літери { $first } та { $last }
symbols-and-letters = цифри від { $low } до { $high } і літери від { $first } до { $last }
symbols-and-letters-without = цифри від { $low } до { $high } і літери від { $first } до { $last } без { $without }
symbols-letters = літери { $letters }
letters-for-digits = цифра літера | цифри літери | цифрі літері | цифру літеру | цифрою літерою | цифр літер | цифрам літерам | цифрами літерами | цифрах літерах
letters-stand = Замість цифр тут стоять літери.
row-spells = рядок { $number } утворює слово { $word }
    .short = р{ $number } утворює слово { $word }
column-spells = стовпець { $number } утворює слово { $word }
    .short = с{ $number } утворює слово { $word }
cells-spell = клітинки від { $first } до { $last } утворюють слово { $word }
boxes-have = Кожен блок має { $high } і { $wide }.
rows-counted = { $n ->
    [1] один рядок
    [few] { CASE($number, "masculine") } рядки
   *[other] { $number } рядків
}
columns-counted = { $n ->
    [1] один стовпець
    [few] { CASE($number, "masculine") } стовпці
   *[other] { $number } стовпців
}
region-at = Область { $number }: { $cells }
# Where one of several overlapping grids lies.
grid-at = сітка { $grid }: рядки { $top }–{ $bottom }, стовпці { $left }–{ $right }
    .short = сітка { $grid }: р{ $top }–{ $bottom }, с{ $left }–{ $right }
grid-boxes = Класична
grid-regions = Нерегулярна
grid-lines = Латинський квадрат
grids-overlap = Сітки з перекриттям
grid-holes = Чорні клітинки
latin-with = Латинський квадрат: { $rules }
rule-titled = { $title }: { $sentence }
# A rule that holds in some of several grids, $grids being their letters.
rule-in-grids = { $n ->
    [1] Сітка { $grids }
   *[other] Сітки { $grids }
}: { $sentence }

## Around a puzzle

puzzle-numbered = Головоломка { $number }
puzzle-named = Головоломка { $name }
key-to = Розв’язок головоломки { $name }
hints-for = Підказки до головоломки { $name }
back-to = Назад до головоломки { $number }
difficulty-of = складність { $figure }
band-said = { $band }, рівень { $number } з 5, складність { $figure }.
set-by = Автор: { $setter }.
puzzles-by = Автори головоломок: { $setters }
edited-by = Редакція: { $editor }
first-shown = перша публікація: { $date }
points = { $n ->
    [one] { $n } бал
    [few] { $n } бали
   *[other] { $n } балів
}
flaw-none = Немає розв’язку
flaw-several = Більше ніж один розв’язок
flaw-undecided = Не з’ясовано
draft = ЧЕРНЕТКА
time = Час
isbn = ISBN { $number }
isbn-printed = ISBN { $number } (друк)
isbn-ebook = ISBN { $number } (електронна книжка)
index-note = Числа — номери головоломок.
# The number of the page follows.
key-on-page = Розв’язок: с.
hints-on-page = Підказки: с.
page = сторінка
terms-on-page = Менш знайомі слова пояснено на сторінці
steps-counted = { $n ->
    [one] { $number } крок
    [few] { $number } кроки
   *[other] { $number } кроків
}
rules-face-grid = Правила наступної головоломки — на сторінці поруч із її сіткою.
puzzles-counted = { $n ->
    [1] одна головоломка
    [one] { $number } головоломка
    [few] { $number } головоломки
   *[other] { $number } головоломок
}

# On the opening page of a chapter, before rules.
rules-of-chapter = У кожній головоломці цього розділу:
belongs-to = Ця книжка належить
begun-on = Розпочато
finished-on = Завершено

## Hints

hints-note = До кожної головоломки є три підказки про перше місце, де легко застрягнути. Кожна відкриває більше за попередню, а наступної ніколи не видно. Клітинки позначаємо рядком (r) і стовпцем (c): r5c2 лежить у рядку 5 і стовпці 2.
hints-note-sheet = До кожної головоломки є три підказки про перше місце, де легко застрягнути. Кожна відкриває більше за попередню: подальші прикрийте аркушем паперу. Клітинки позначаємо рядком (r) і стовпцем (c): r5c2 лежить у рядку 5 і стовпці 2.
hints-note-text = До кожної головоломки є три підказки про перше місце, де легко застрягнути. Кожна відкриває більше за попередню. Відкрийте тільки ту, яка вам потрібна.
hint-level-1 = Куди дивитися
hint-level-2 = Чого шукати
hint-level-3 = Наступний крок
hints-level-1 = Підказки: куди дивитися
hints-level-2 = Підказки: чого шукати
hints-level-3 = Підказки: наступний крок
hints-overleaf-2 = Другі підказки — на звороті.
hints-overleaf-3 = Треті підказки — на звороті.
# Where a hint leads to.
hint-leads-2 = друга підказка до головоломки { $number }
hint-leads-3 = третя підказка до головоломки { $number }
hint-leads-key = розв’язок головоломки { $number }
hint-leads-puzzle = головоломка { $number }

## Handouts and contests

name = Ім’я та прізвище
date = Дата
copy-of = Примірник { $number } з { $count }
check-row = Розв’язавши сітку, перепишіть цифри з клітинок, позначених літерами, у віконця її контрольного рядка. За ними оцінюють ваш аркуш.
marker-sheet = Аркуш для перевірки
marker-help = Прикладіть контрольні рядки аркуша до надрукованих тут. Рядок, що збігається, одразу дає свої бали; якщо рядок інший або сітка здається недописаною, звірте її з відповідями на звороті.
# $points: how many there are to win.
of-points = з { $points }
total-of = Разом із { $points }
minutes = хвилин
place = Місце
total = Разом

## Covers

cover-count = { $number } { $n ->
    [one] головоломка з рівно одним розв’язком.
    [few] головоломки, кожна з рівно одним розв’язком.
   *[other] головоломок, кожна з рівно одним розв’язком.
}
cover-sample = № { $number }
# After a large figure.
cover-puzzles = { $n ->
    [one] головоломка
    [few] головоломки
   *[other] головоломок
}
cover-kinds = { $n ->
    [one] вид правил
    [few] види правил
   *[other] видів правил
}

## The presenter’s crib

crib = Шпаргалка ведучого
crib-steps = Числа на полях — номери кроків.
crib-look = дивіться сюди
crib-look-along = дивіться вздовж
crib-next = наступний запис
crib-eliminated = викреслено
crib-supposed = припущено
crib-step = крок { $first }
crib-run = кроки { $first }–{ $last }
crib-follows = що з цього випливає, по черзі
cells-filled = заповнено клітинок: { $number }
start = Початок
solution = Розв’язок
story-set-by = { $title }, автор: { $setter }
story-setter = автор: { $setter }
story-crux = Важкий момент
story-onwards = Що далі
story-ending = До кінця

## The chart of all rules

chart = Правила та їхні позначки
chart-subject = Кожен вид правил зі своєю позначкою та реченням
chart-lines = Уздовж ліній
chart-cells = У клітинках і на ділянках
chart-borders = Між клітинками й на кутах
chart-outside = Поза сіткою
chart-whole = В усій сітці, без позначки
