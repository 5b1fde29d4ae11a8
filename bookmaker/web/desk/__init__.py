"""The desk: a book in the browser while it is typed. Its troubles, its pictures, and what can be made of it.

In: the path of a book. Out: pages on this machine's loopback address. `reading` turns files into what is shown,
`proving` asks other processes what is true of it, `making` runs the commands, `serving` alone knows Starlette and
uvicorn.
"""
