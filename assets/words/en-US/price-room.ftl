### The room of the price: days, crew, money, tasks, materials.

price-tax-remark = Sales tax rules differ from state to state. Check with your bookkeeper.
