using Nookwright.Cutting;
using Nookwright.Measure;
using static Nookwright.Tests.Fixtures.HandMadeWorkbook;

namespace Nookwright.Tests.Fixtures;

/// <summary>Two sheets cut by hand: rough strips with the track saw, then one fence and three stop settings, and the doors' own fence.</summary>
public static class HandMadePlan
{
    private static readonly Length Track = In(0, 3, 32);
    private static readonly Length Table = In(0, 1, 8);
    private static readonly Length Dress = In(0, 1, 4);
    private static readonly Length Between = In(24) - In(1, 13, 32);

    /// <summary>The plan.</summary>
    public static Plan Make()
    {
        var saw = new HandSaw();
        PlanSheet[] sheets = [Sheet(saw, 1, "birch"), Sheet(saw, 2, "oak")];
        var breakdown = Breakdown(saw);
        var visits = new[]
        {
            Fence(saw, 1, In(15, 1, 2), "bottoms", ("S1-C1", "S1-R1"), ("S1-C2", "S1-R2"), ("S1-C3", "S1-R3")),
            Stop(
                saw,
                2,
                In(30),
                "sides",
                ("S1-R1", [.. Ids("box-1", "side")], "S1-X1"),
                ("S1-R3", [.. Ids("box-2", "side")], "S1-X3")
            ),
            Stop(saw, 3, Between, "bottoms", ("S1-R2", [.. Ids("box-1", "level"), .. Ids("box-2", "level")], "S1-X2")),
            Fence(saw, 4, In(11, 7, 8), null, ("S2-C1", "S2-R1")),
            Stop(saw, 5, In(29, 7, 8), null, ("S2-R1", ["doors-1.door-1", "doors-1.door-2"], "S2-X1")),
        };
        return new(sheets, saw.Workpieces, breakdown, visits, [], 5);
    }

    private static IEnumerable<string> Ids(string box, string kind) =>
        (kind == "side" ? new[] { "left-side", "right-side" } : ["bottom", "top"]).Select(member => $"{box}.{member}");

    private static PlanSheet Sheet(HandSaw saw, int number, string material)
    {
        saw.Lay($"S{number}", number, In(96), In(48));
        return new(number, $"{material}/1", material, In(96), In(48), $"S{number}");
    }

    private static SawCut[] Breakdown(HandSaw saw)
    {
        SawCut Rip(string on, Length at, (string, WorkpieceUse) gives, (string, WorkpieceUse) leaves) =>
            saw.Cut(Track, (CutKind.Breakdown, on, SheetAxis.Width), at, gives, leaves);
        return
        [
            Rip("S1", In(15, 7, 8), ("S1-C1", WorkpieceUse.Chunk), ("S1-C4", WorkpieceUse.Chunk)),
            Rip("S1-C4", In(15, 7, 8), ("S1-C2", WorkpieceUse.Chunk), ("S1-C3", WorkpieceUse.Chunk)),
            Rip("S2", In(17), ("S2-C2", WorkpieceUse.Chunk), ("S2-C3", WorkpieceUse.Chunk)),
            Rip("S2-C3", In(12, 1, 2), ("S2-C1", WorkpieceUse.Chunk), ("S2-X3", WorkpieceUse.Offcut)),
            saw.Cut(
                Track,
                (CutKind.Breakdown, "S2-C2", SheetAxis.Length),
                In(50),
                ("top.slab", WorkpieceUse.Held),
                ("S2-X2", WorkpieceUse.Offcut)
            ),
        ];
    }

    private static Visit Fence(
        HandSaw saw,
        int number,
        Length at,
        string? match,
        params (string On, string Gives)[] rips
    )
    {
        var dressings = rips.Select(rip =>
            saw.Cut(
                Table,
                (CutKind.Dressing, rip.On, SheetAxis.Width),
                Dress - Table,
                ($"{rip.On}-d", WorkpieceUse.Waste),
                ($"{rip.On}-s", WorkpieceUse.Chunk)
            )
        );
        var dressed = dressings.ToList();
        var sizing = rips.Select(rip =>
            saw.Cut(
                Table,
                (CutKind.Sizing, $"{rip.On}-s", SheetAxis.Width),
                at,
                (rip.Gives, WorkpieceUse.Strip),
                ($"{rip.Gives}-w", WorkpieceUse.Waste)
            )
        );
        return new(number, Saw.Fence, at, 1, [.. dressed, .. sizing], match is null ? [] : [match]);
    }

    private static Visit Stop(
        HandSaw saw,
        int number,
        Length at,
        string? match,
        params (string On, string[] Parts, string Left)[] strips
    )
    {
        var cuts = strips.SelectMany(strip => Crosscuts(saw, at, strip)).ToList();
        return new(number, Saw.Stop, at, 1, cuts, match is null ? [] : [match]);
    }

    private static IEnumerable<SawCut> Crosscuts(HandSaw saw, Length at, (string On, string[] Parts, string Left) strip)
    {
        yield return saw.Cut(
            Table,
            (CutKind.Dressing, strip.On, SheetAxis.Length),
            Dress - Table,
            ($"{strip.On}-d", WorkpieceUse.Waste),
            ($"{strip.On}-0", WorkpieceUse.Strip)
        );
        for (var i = 0; i < strip.Parts.Length; i++)
        {
            var isLast = i == strip.Parts.Length - 1;
            var leaves = isLast ? (strip.Left, WorkpieceUse.Offcut) : ($"{strip.On}-{i + 1}", WorkpieceUse.Strip);
            var gives = (strip.Parts[i], WorkpieceUse.Part);
            yield return saw.Cut(Table, (CutKind.Sizing, $"{strip.On}-{i}", SheetAxis.Length), at, gives, leaves);
        }
    }
}
