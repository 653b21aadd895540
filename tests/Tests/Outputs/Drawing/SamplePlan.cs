using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Tests.Drawing;

/// <summary>A small plan put together by hand: one sheet, four breakdown cuts, two fence and three stop settings, one held blank.</summary>
internal static class SamplePlan
{
    public static CutRequest Request { get; } =
        new(
            [
                Part("box.left", "A", 700, 554),
                Part("box.right", "A", 700, 554),
                Part("box.bottom", "B", 744, 554),
                Part("base.front", "C", 1200, 80),
                Part("base.back", "D", 1200, 80),
                Part("door", "E", 745, 425) with
                {
                    Awaits = ["run.width"],
                },
            ],
            [],
            [],
            [new("sheet", SampleJob.Ply, Mm(2440), Mm(1220), null, 80, false, true)],
            SampleJob.Saws with
            {
                Dressing = Length.Zero,
            },
            new()
        );

    /// <remarks>
    /// Breakdown: 1655 across the sheet, 600 along the larger chunk, and the blank of E, 745 × 425, out of the smaller one.
    /// At the saw: fence 554 and 80, stop 1200, 744 and 700, each measured from an
    /// edge that came so from the mill or the table saw.
    /// </remarks>
    public static Plan Plan { get; } =
        new(
            [new(1, "sheet", SampleJob.Ply, Mm(2440), Mm(1220), "S1")],
            [
                Piece("S1", 0, 0, 2440, 1220, WorkpieceUse.Sheet),
                Piece("S1-C1", 0, 0, 1655, 1220, WorkpieceUse.Chunk),
                Piece("S1-C2", 1657.2, 0, 782.8, 1220, WorkpieceUse.Chunk),
                Piece("S1-C3", 0, 0, 1655, 600, WorkpieceUse.Chunk),
                Piece("S1-C4", 0, 602.2, 1655, 617.8, WorkpieceUse.Chunk),
                Piece("S1-C5", 1657.2, 795, 782.8, 425, WorkpieceUse.Chunk),
                Piece("S1-C6", 1657.2, 0, 782.8, 792.8, WorkpieceUse.Chunk),
                Piece("S1-H1", 1657.2, 795, 745, 425, WorkpieceUse.Held, "door"),
                Piece("S1-W1", 2404.4, 795, 35.6, 425, WorkpieceUse.Waste),
                Piece("S1-T1", 0, 0, 1655, 554, WorkpieceUse.Strip),
                Piece("S1-W2", 0, 557.2, 1655, 42.8, WorkpieceUse.Waste),
                Piece("S1-T2", 1657.2, 0, 782.8, 554, WorkpieceUse.Strip),
                Piece("S1-F1", 1657.2, 557.2, 782.8, 235.6, WorkpieceUse.Offcut),
                Piece("S1-T3", 0, 1140, 1655, 80, WorkpieceUse.Strip),
                Piece("S1-C7", 0, 602.2, 1655, 534.6, WorkpieceUse.Chunk),
                Piece("S1-T4", 0, 1056.8, 1655, 80, WorkpieceUse.Strip),
                Piece("S1-F2", 0, 602.2, 1655, 451.4, WorkpieceUse.Offcut),
                Piece("S1-P1", 0, 1140, 1200, 80, WorkpieceUse.Part, "base.front"),
                Piece("S1-W3", 1203.2, 1140, 451.8, 80, WorkpieceUse.Waste),
                Piece("S1-P2", 0, 1056.8, 1200, 80, WorkpieceUse.Part, "base.back"),
                Piece("S1-W4", 1203.2, 1056.8, 451.8, 80, WorkpieceUse.Waste),
                Piece("S1-P3", 1696, 0, 744, 554, WorkpieceUse.Part, "box.bottom"),
                Piece("S1-W5", 1657.2, 0, 35.6, 554, WorkpieceUse.Waste),
                Piece("S1-P4", 0, 0, 700, 554, WorkpieceUse.Part, "box.left"),
                Piece("S1-C8", 703.2, 0, 951.8, 554, WorkpieceUse.Chunk),
                Piece("S1-P5", 703.2, 0, 700, 554, WorkpieceUse.Part, "box.right"),
                Piece("S1-F3", 1406.4, 0, 248.6, 554, WorkpieceUse.Offcut),
            ],
            [
                new(1, CutKind.Breakdown, "S1", SheetAxis.Length, FromEdge.Low, Mm(1655), "S1-C1", "S1-C2"),
                new(2, CutKind.Breakdown, "S1-C1", SheetAxis.Width, FromEdge.Low, Mm(600), "S1-C3", "S1-C4"),
                new(3, CutKind.Breakdown, "S1-C2", SheetAxis.Width, FromEdge.High, Mm(425), "S1-C5", "S1-C6"),
                new(4, CutKind.Breakdown, "S1-C5", SheetAxis.Length, FromEdge.Low, Mm(745), "S1-H1", "S1-W1"),
            ],
            [
                Visit(1, Saw.Fence, 554, FromEdge.Low, (5, "S1-C3", "S1-T1", "S1-W2"), (6, "S1-C6", "S1-T2", "S1-F1")),
                Visit(2, Saw.Fence, 80, FromEdge.High, (7, "S1-C4", "S1-T3", "S1-C7"), (8, "S1-C7", "S1-T4", "S1-F2")),
                Visit(3, Saw.Stop, 1200, FromEdge.Low, (9, "S1-T3", "S1-P1", "S1-W3"), (10, "S1-T4", "S1-P2", "S1-W4")),
                Visit(4, Saw.Stop, 744, FromEdge.High, (11, "S1-T2", "S1-P3", "S1-W5")),
                Visit(5, Saw.Stop, 700, FromEdge.Low, (12, "S1-T1", "S1-P4", "S1-C8"), (13, "S1-C8", "S1-P5", "S1-F3")),
            ],
            [],
            5
        );

    private static Workpiece Piece(
        string id,
        double x,
        double y,
        double length,
        double width,
        WorkpieceUse use,
        string? part = null
    ) => new(id, 1, Mm(x), Mm(y), Mm(length), Mm(width), use, part);

    private static Visit Visit(
        int number,
        Saw saw,
        double setting,
        FromEdge from,
        params (int Number, string On, string Gives, string Leaves)[] cuts
    )
    {
        var along = saw == Saw.Fence ? SheetAxis.Width : SheetAxis.Length;
        SawCut Cut((int Number, string On, string Gives, string Leaves) c) =>
            new(c.Number, CutKind.Sizing, c.On, along, from, Mm(setting), c.Gives, c.Leaves);
        return new(number, saw, Mm(setting), 1, [.. cuts.Select(Cut)], []);
    }

    private static CutPart Part(string id, string letter, double length, double width) =>
        new(id, letter, id.Replace('.', ' '), SampleJob.Ply, Mm(length), Mm(width), PanelFigure.Length, []);

    private static Length Mm(double millimetres) => SampleJob.Mm(millimetres);
}
