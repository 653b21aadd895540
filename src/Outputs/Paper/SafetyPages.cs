namespace Nookwright.Paper;

/// <summary>What can hurt you or the house, said before the first cut; and what this program has not checked.</summary>
/// <remarks>
/// Weights of sheets: trade practice, about 55 lb (25 kg) for a hardwood plywood sheet of 3/4 in, 4 × 8 ft (American
/// Woodworker, on working alone with plywood). Cords: the US National Electrical Code's section 400.12 as a trade journal
/// quotes it. All else is common practice, no source.
/// </remarks>
internal static class SafetyPages
{
    private static readonly (string Head, string[] Items)[] Sections =
    [
        (
            "At the saws",
            [
                "Kickback: a piece that pinches or turns at the back of the blade is thrown at you. Keep the riving knife on, keep one edge against the fence, stand beside the line of the blade, and let nobody stand behind you.",
                "Never use fence and crosscut gauge on the same cut unless a block ends the fence before the blade: the piece between them jams.",
                "Narrow rips: when the hand would pass within a hand's breadth of the blade, use a push block or two push sticks, and push until the piece is past the blade.",
                "Short pieces do not stay against a fence. Clamp them to a sled, or cut them from a longer piece.",
                "Large pieces: support them level with the table before, beside and behind. A sheet that tips lifts into the blade.",
                "Track saw: clamp the track where it can slip, support both halves so that the cut neither closes nor drops, keep the cord and hose behind you.",
                "Unplug a saw, or take its battery out, before you touch the blade. Eye and ear protection on; no gloves, no loose sleeves at a turning blade.",
            ]
        ),
        (
            "Lifting and carrying",
            [
                "A sheet of hardwood plywood, 3/4 in thick and 4 by 8 ft, weighs about 55 lb (25 kg), some much more. Carry it with two people or a sheet carrier; store sheets so that they cannot fall over.",
                "Break a sheet down on the floor or on low supports before you lift its parts to the saw. Long tops and finished boxes take two people, and a third at stairs.",
            ]
        ),
        (
            "Dust and finish",
            [
                "Wood dust harms the lungs and burns fast. Connect a vacuum or collector to each saw, wear a mask that seals, and sweep before you finish.",
                "Oily rags can catch fire by themselves: dry them flat outdoors or keep them in a closed metal can with water.",
            ]
        ),
        (
            "Fixing to the house",
            [
                "Tipping: a box that stands alone goes over when a child climbs it or all doors open at once. Screw every tall or shallow box to studs or masonry before it is loaded, and never leave one standing loose.",
                "Find studs, pipes and cables before you drill. Screws must bite in the stud behind the plaster; fixings in drywall alone do not count.",
                "Outlets: cover no box and no outlet, and keep every one within reach. An extension cord is no substitute for fixed wiring and does not belong inside walls or cabinets (US National Electrical Code, 400.12). New or moved outlets, and lamps built in, are work for a licensed electrician under your local code.",
                "Vents: keep registers and returns open, lead the air through a duct to the front, and do not use the space under a base as a duct.",
            ]
        ),
        (
            "What has not been checked",
            [
                "Your house, your saws and your skill. Your local building, fire and electrical codes come before anything printed here.",
                "Whether walls and studs carry the load, what is inside the walls, and whether sheets are flat, dry and as thick as measured.",
                "Whether shelves sag, runners hold, boxes tip, doors clear each other, or pieces pass the door and stairs: this packet gives no answer on these.",
            ]
        ),
    ];

    /// <summary>The pages.</summary>
    public static IReadOnlyList<PaperPage> Of(PaperFormat paper)
    {
        var flow = new PageFlow(paper, "Safety", "Safety");
        flow.Text(
            "Read this before the first cut. It reminds; it does not teach. What you have not been shown, have shown to you."
        );
        foreach (var (head, items) in Sections)
        {
            flow.Head(head);
            foreach (var item in items)
                flow.Item("•", item, TypeSize.Table, indent: 5);
        }
        return flow.Pages;
    }
}
