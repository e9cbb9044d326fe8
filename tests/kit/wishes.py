"""Random wishes: units that a maker might write down, most of which can be made."""

from __future__ import annotations

from typing import Any, get_args

from hypothesis import strategies as st

from rodwright.wishes.joints import JointWord

Wish = dict[str, Any]

JOINTS = ["housed", *get_args(JointWord)]
ENDS = [joint for joint in JOINTS if joint not in ("rebated", "mitred")]

level_loads = st.sampled_from(
    [
        "books",
        "files",
        "crockery",
        "folded clothes",
        "nothing",
        "television 18 kg",
        "25 kg/m",
        "30 kg",
        "50 lb/ft2",
        {"of": "potted plants 12 kg", "television": "9 kg"},
    ]
)
space_loads = level_loads | st.sampled_from(["clothes on a rail", "coats 10 kg/m"])


def loaded(key: str, wish: st.SearchStrategy[Wish], loads: Any) -> st.SearchStrategy[Wish]:
    """The same wishes, some of which say under ``key`` what is carried."""
    said = st.one_of(st.just({}), loads.map(lambda load: {key: load}))
    return st.builds(lambda each, load: each | load, wish, said)


shelves = st.fixed_dictionaries(
    {
        "count": st.integers(1, 3),
        "layers": st.integers(1, 2),
        "fixed": st.booleans(),
        "ends": st.sampled_from([*ENDS, "housed", "butted"]),
        "stopped": st.sampled_from([0, 0, 0, 10]),
        "setback": st.sampled_from([0, 15]),
        "spacing": st.sampled_from(["openings", "centres"]),
    }
)
doors = st.builds(
    lambda common, kind: common | kind,
    st.fixed_dictionaries(
        {
            "count": st.sampled_from([1, 2]),
            "stock": st.sampled_from(["ash", "ply"]),
            "gap": st.sampled_from([1.5, 2, 3]),
        },
        optional={"handle": st.just({}), "hung": st.just("overlay")},
    ),
    st.sampled_from([{}, {"kind": "framed", "panel": {"stock": "thin"}}]),
)
drawers = st.fixed_dictionaries(
    {
        "count": st.integers(1, 3),
        "stock": st.sampled_from(["ply", "ash"]),
        "bottom": st.just({"stock": "thin"}),
        "hung": st.sampled_from(["inset", "overlay"]),
        "slides": st.sampled_from(
            [{"kind": "side"}, {"kind": "under", "below": 20}, {"kind": "runners"}]
        ),
        "corners": st.sampled_from(["rebated", "dowelled", "screwed", "housed"]),
    }
)
dividers = st.one_of(
    st.fixed_dictionaries(
        {}, optional={"setback": st.sampled_from([0, 20]), "height": st.integers(60, 200)}
    ),
)
between = st.fixed_dictionaries(
    {
        "kind": st.sampled_from(["shelf", "shelf", "rail", "nothing"]),
        "setback": st.sampled_from([0, 10]),
    }
)


def space(depth: int) -> st.SearchStrategy[Wish]:
    """A space of the interior, divided up to ``depth`` times."""
    open_leaf = st.one_of(
        loaded("load", st.just({}), space_loads),
        st.builds(lambda each: {"shelves": each}, loaded("load", shelves, level_loads)),
    )
    shut_leaf = st.builds(lambda each, front: each | {"doors": front}, open_leaf, doors)
    chest = st.builds(lambda each: {"drawers": each}, loaded("load", drawers, level_loads))
    leaf = st.one_of(open_leaf, open_leaf, shut_leaf, chest)
    if depth == 0:
        return leaf
    inner = space(depth - 1)

    def divided(key: str, size: str, like: str, how: st.SearchStrategy[Wish]) -> Any:
        lengths = st.sampled_from(["1 share", "1 share", "2 shares", 250])
        spaces = st.lists(
            st.builds(lambda length, each: {size: length} | each, lengths, inner),
            min_size=2,
            max_size=3,
        )
        divided = st.builds(
            lambda each, way: {key: [each[0] | {size: "1 share"}, *each[1:]], like: way},
            spaces,
            how,
        )
        return loaded("load", divided, space_loads)

    return st.one_of(
        leaf,
        divided("columns", "width", "dividers", dividers),
        divided("rows", "height", "between", between),
    )


bases = st.one_of(
    st.none(),
    st.fixed_dictionaries(
        {"kind": st.just("plinth"), "height": st.integers(60, 150)},
        optional={"toe_space": st.integers(0, 80), "sides": st.integers(0, 40)},
    ),
    st.fixed_dictionaries({"kind": st.just("toe_board"), "height": st.integers(60, 150)}),
    st.fixed_dictionaries(
        {
            "kind": st.just("legs"),
            "height": st.integers(60, 200),
            "stock": st.just("oak"),
            "held_by": st.sampled_from(["blocks", "rails"]),
        }
    ),
    st.fixed_dictionaries({"kind": st.just("levellers"), "height": st.integers(100, 150)}),
)
backs = st.one_of(
    st.none(),
    st.builds(
        lambda fixing: {"stock": "thin", "fixing": fixing},
        st.sampled_from(["applied", "rebated", "grooved"]),
    ),
)
frames = st.one_of(
    st.none(),
    st.fixed_dictionaries(
        {
            "stock": st.just("ash"),
            "width": st.integers(30, 70),
            "corners": st.sampled_from(["mitred", "butted"]),
            "rails": st.sampled_from(["both", "both", "both", "both", "top", "bottom"]),
            "eased": st.sampled_from([0, 4]),
            "mid_stiles": st.sampled_from([None, 40, 40, 40]),
            "mid_rails": st.sampled_from([None, 30, 30, 30]),
        }
    ),
)
lippings = st.one_of(
    st.none(),
    st.builds(
        lambda more: {"stock": "ash", "thickness": 12, "edges": ["shelves", *more]},
        st.sampled_from([[], ["dividers"], ["sides", "top", "bottom"]]),
    ),
)
heads = st.one_of(
    st.just({}),
    st.builds(
        lambda front, worktop: {"worktop": worktop | {"overhang": {"front": front}}},
        st.integers(0, 40),
        loaded(
            "load",
            st.fixed_dictionaries({"stock": st.just("oak"), "layers": st.integers(1, 2)}),
            level_loads,
        ),
    ),
    st.builds(
        lambda height, place: {"cornice": {"stock": "ash", "height": height, "place": place}},
        st.integers(40, 90),
        st.sampled_from(["lapped", "standing"]),
    ),
)


slopes = st.builds(
    lambda falls, low, pitch: {"slope": {"falls": falls, "low": low, "pitch": pitch}},
    st.sampled_from(["left", "right", "front", "rear"]),
    st.integers(500, 2300),
    st.integers(10, 70),
)
cutouts = st.builds(
    lambda each: {"cutouts": [each]},
    st.one_of(
        st.fixed_dictionaries(
            {
                "kind": st.just("skirting"),
                "height": st.integers(40, 150),
                "depth": st.integers(10, 25),
            }
        ),
        st.fixed_dictionaries(
            {
                "kind": st.just("pipe"),
                "runs": st.sampled_from(["upright", "back", "across"]),
                "at": st.tuples(st.integers(40, 600), st.integers(40, 600)).map(list),
                "diameter": st.integers(15, 40),
            }
        ),
    ),
)
rooms = st.one_of(st.just({}), st.just({}), st.just({}), slopes, cutouts)


@st.composite
def wishes(draw: st.DrawFn) -> Wish:
    """A whole unit."""
    wish: Wish = {
        "size": {
            "width": draw(st.integers(700, 2400)),
            "height": draw(st.integers(700, 2400)),
            "depth": draw(st.integers(250, 600)),
        },
        "carcass": {
            "stock": "ply",
            "corners": draw(st.sampled_from(JOINTS)),
            "top": draw(st.sampled_from(["between", "over", "none"])),
            "bottom": draw(st.sampled_from(["between", "over", "none"])),
        },
        "interior": draw(space(2)),
    }
    if draw(st.booleans()):
        wish["loads"] = draw(st.sampled_from(["books", "30 lb/ft", {"of": "files", "years": 0}]))
    stands = wish["carcass"]["bottom"] != "none"
    chosen = {
        "base": draw(bases) if stands else None,
        "back": draw(backs),
        "face_frame": draw(frames),
        "lipping": draw(lippings),
    }
    return wish | draw(heads) | draw(rooms) | {key: value for key, value in chosen.items() if value}
