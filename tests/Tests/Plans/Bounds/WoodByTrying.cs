using CsCheck;
using Nookwright.Cutting;
using Nookwright.Projects;
using Nookwright.Tests.Planning;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Bounds;

/// <summary>Bounds against the true fewest sheets of jobs small enough to try everything.</summary>
public class WoodByTrying
{
    private const int X = 9;
    private const int Y = 7;

    /// <summary>Up to six parts on sheets of 9 × 7, turned where they may be, without kerf or dressing.</summary>
    [Fact]
    public void Never_above_the_fewest_sheets_there_can_be_and_mostly_equal()
    {
        var (jobs, equal) = (0, 0);
        Gen.Select(Gen.Int[1, X], Gen.Int[1, Y], Gen.Bool)
            .Array[1, 6]
            .Sample(
                sizes =>
                {
                    CutPart[] parts =
                    [
                        .. sizes.Select(
                            (s, i) => Part($"p{i}", s.Item1, s.Item2, s.Item3 ? PanelFigure.Any : PanelFigure.Length)
                        ),
                    ];
                    var request = Request(parts) with { Stock = [Sheet(X, Y)], Saws = Ideal };
                    var fewest = new GuillotineByTrying(parts).FewestSheets(X, Y);
                    var (quick, sharp) = (Given.Quick(request).Sheets, Given.Sharpest(request).Sheets);
                    Assert.InRange(quick, 1, sharp);
                    Assert.InRange(sharp, 1, fewest);
                    (jobs, equal) = (jobs + 1, equal + (sharp == fewest ? 1 : 0));
                },
                iter: 200,
                threads: 1
            );
        TestContext.Current.TestOutputHelper?.WriteLine($"Equal in {equal} of {jobs} jobs.");
        Assert.InRange(equal, jobs * 9 / 10, jobs);
    }

    /// <summary>Up to five parts that may not be turned, with a kerf of 1 for both saws and edges that are trusted.</summary>
    [Fact]
    public void Kerf_between_parts_is_counted_and_none_beyond_the_last() =>
        Gen.Select(Gen.Int[1, X], Gen.Int[1, Y])
            .Array[1, 5]
            .Sample(
                sizes =>
                {
                    var parts = sizes.Select((s, i) => Part($"p{i}", s.Item1, s.Item2, PanelFigure.Length));
                    var request = Request([.. parts]) with
                    {
                        Stock = [Sheet(X, Y)],
                        Saws = Ideal with { TableKerf = Mm(1), TrackKerf = Mm(1) },
                    };
                    var fewest = TryingEverything.FewestSheets(X, Y, 1, sizes);
                    Assert.InRange(Given.Sharpest(request).Sheets, 1, fewest);
                },
                iter: 100,
                threads: 1
            );
}
