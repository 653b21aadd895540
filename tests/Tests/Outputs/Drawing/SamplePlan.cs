using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Tests.Drawing;

/// <summary>A small plan put together by hand: one sheet, two breakdown cuts, a rip and a crosscut visit, one held blank.</summary>
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
                Part("door", "E", 720, 400) with
                {
                    Awaits = ["run.width"],
                },
            ],
            [],
            [],
            [new("sheet", SampleJob.Ply, Mm(2440), Mm(1220), null, 80, false, true)],
            SampleJob.Saws,
            new()
        );

    /// <remarks>
    /// Cut 1 across the sheet at 1560; cut 2 along the larger chunk at 600. Then at the fence 554 rips S1-C3, and at the
    /// stop 700 twice and 744 cut it; fence 80 rips S1-C4 twice.
    /// </remarks>
    public static Plan Plan { get; } =
        new(
            [new(1, "sheet", SampleJob.Ply, Mm(2440), Mm(1220), "S1")],
            [
                new("S1", 1, Mm(0), Mm(0), Mm(2440), Mm(1220), WorkpieceUse.Sheet, null),
                new("S1-C1", 1, Mm(0), Mm(0), Mm(1655), Mm(1220), WorkpieceUse.Chunk, null),
                new("S1-O1", 1, Mm(1657.2), Mm(0), Mm(782.8), Mm(1220), WorkpieceUse.Chunk, null),
                new("S1-C2", 1, Mm(0), Mm(0), Mm(1655), Mm(600), WorkpieceUse.Chunk, null),
                new("S1-C3", 1, Mm(0), Mm(602.2), Mm(1655), Mm(617.8), WorkpieceUse.Chunk, null),
                new("S1-T1", 1, Mm(0), Mm(0), Mm(1655), Mm(554), WorkpieceUse.Strip, null),
                new("S1-W1", 1, Mm(0), Mm(557.2), Mm(1655), Mm(42.8), WorkpieceUse.Waste, null),
                new("S1-P1", 1, Mm(0), Mm(0), Mm(700), Mm(554), WorkpieceUse.Part, "box.left"),
                new("S1-R1", 1, Mm(703.2), Mm(0), Mm(951.8), Mm(554), WorkpieceUse.Chunk, null),
                new("S1-P2", 1, Mm(703.2), Mm(0), Mm(700), Mm(554), WorkpieceUse.Part, "box.right"),
                new("S1-F1", 1, Mm(1406.4), Mm(0), Mm(248.6), Mm(554), WorkpieceUse.Offcut, null),
                new("S1-P4", 1, Mm(0), Mm(602.2), Mm(1655), Mm(80), WorkpieceUse.Strip, null),
                new("S1-R2", 1, Mm(0), Mm(685.4), Mm(1655), Mm(534.6), WorkpieceUse.Chunk, null),
                new("S1-P5", 1, Mm(0), Mm(685.4), Mm(1655), Mm(80), WorkpieceUse.Strip, null),
                new("S1-F2", 1, Mm(0), Mm(768.6), Mm(1655), Mm(451.4), WorkpieceUse.Offcut, null),
                new("S1-P6", 1, Mm(0), Mm(602.2), Mm(1200), Mm(80), WorkpieceUse.Part, "base.front"),
                new("S1-P7", 1, Mm(0), Mm(685.4), Mm(1200), Mm(80), WorkpieceUse.Part, "base.back"),
                new("S1-H1", 1, Mm(1657.2), Mm(0), Mm(745), Mm(425), WorkpieceUse.Held, "door"),
                new("S1-P3", 1, Mm(1657.2), Mm(430), Mm(744), Mm(554), WorkpieceUse.Part, "box.bottom"),
            ],
            [
                new(1, CutKind.Breakdown, "S1", SheetAxis.Length, FromEdge.Low, Mm(1655), "S1-C1", "S1-O1"),
                new(2, CutKind.Breakdown, "S1-C1", SheetAxis.Width, FromEdge.Low, Mm(600), "S1-C2", "S1-C3"),
            ],
            [
                new(
                    1,
                    Saw.Fence,
                    Mm(554),
                    1,
                    [new(3, CutKind.Sizing, "S1-C2", SheetAxis.Width, FromEdge.Low, Mm(554), "S1-T1", "S1-W1")],
                    []
                ),
                new(
                    2,
                    Saw.Fence,
                    Mm(80),
                    1,
                    [
                        new(4, CutKind.Sizing, "S1-C3", SheetAxis.Width, FromEdge.Low, Mm(80), "S1-P4", "S1-R2"),
                        new(5, CutKind.Sizing, "S1-R2", SheetAxis.Width, FromEdge.Low, Mm(80), "S1-P5", "S1-F2"),
                    ],
                    []
                ),
                new(
                    3,
                    Saw.Stop,
                    Mm(700),
                    1,
                    [
                        new(6, CutKind.Sizing, "S1-T1", SheetAxis.Length, FromEdge.Low, Mm(700), "S1-P1", "S1-R1"),
                        new(7, CutKind.Sizing, "S1-R1", SheetAxis.Length, FromEdge.Low, Mm(700), "S1-P2", "S1-F1"),
                    ],
                    []
                ),
            ],
            [],
            4
        );

    private static CutPart Part(string id, string letter, double length, double width) =>
        new(id, letter, id.Replace('.', ' '), SampleJob.Ply, Mm(length), Mm(width), PanelFigure.Length, []);

    private static Length Mm(double millimetres) => SampleJob.Mm(millimetres);
}
