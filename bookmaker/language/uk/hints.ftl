### Three hints for a puzzle: where to look, what to look for, the step itself.

hint-where = При { $filled } заповнених клітинках: { $where }.
hint-where-at-start = На початку: { $where }.
hint-cells = { COUNT($cells) ->
    [1] клітинка { $cells }
   *[other] клітинки { $cells }
}
hint-around = клітинки навколо клітинки { $cell }

hint-what-last-cell = Остання вільна клітинка.
hint-what-hidden-single = Цифра, що має там тільки одне місце.
hint-what-naked-single = Клітинка, у якій можлива тільки одна цифра.
hint-what-fixed = Цифра, яка єдина лишається.
hint-what-mark = Цифри, які виключає { $noun }.
hint-what-mark--king = Цифри, які виключає хід короля.
hint-what-mark--knight = Цифри, які виключає хід коня.
hint-what-mark--barred-sums = Цифри, які дали б із сусідом заборонену суму.
hint-what-mark--no-doubles = Цифри, які стояли б поруч зі своєю половиною або подвоєнням.
hint-what-mark--non-consecutive = Цифри, які стояли б поруч із цифрою, на один меншою чи більшою.
hint-what-locked-candidates = Цифра, усі місця якої лежать водночас в іншому { house-any }.
hint-what-naked-pair = Дві клітинки, яким лишилися ті самі дві цифри.
hint-what-naked-triple = Три клітинки, яким разом лишилися три цифри.
hint-what-naked-quad = Чотири клітинки, яким разом лишилися чотири цифри.
hint-what-hidden-pair = Дві цифри, що мають ті самі два місця.
hint-what-hidden-triple = Три цифри, що разом мають три місця.
hint-what-hidden-quad = Чотири цифри, що разом мають чотири місця.
hint-what-x-wing = Цифра, що у двох рядках має місця тільки в тих самих двох стовпцях, або навпаки: X-крило.
hint-what-swordfish = Цифра, що у трьох рядках має місця тільки в тих самих трьох стовпцях, або навпаки: меч-риба.
hint-what-jellyfish = Цифра, що в чотирьох рядках має місця тільки в тих самих чотирьох стовпцях, або навпаки: медуза.
hint-what-seen-by-all-places = Клітинка, яку видно з кожного місця певної цифри.
hint-what-either-way = Цифра, яка зникає там за будь-якого вибору.
hint-what-what-if = Цифра, яка швидко веде до суперечності.
# A pattern that is named by its name alone.
hint-what = { $technique }.
