### What tide lines ask.

tide-line-sentence = Along { $n ->
    [1] the tide line
   *[other] each tide line
}, digits rise and fall by turns from the ring on.
tide-line-spoken = Tide line, ring first: { $line }
tide-line-primer = From the ring on, the second digit is greater than the first, the third smaller. Long ones say most.
