"""What a unit's parts are cut from: pieces, their labels and the stock they may come from."""
