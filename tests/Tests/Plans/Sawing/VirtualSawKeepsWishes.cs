using Nookwright.Cutting;
using Nookwright.Sawing;
using Nookwright.Shop;
using Nookwright.Tests.Cutting;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Sawing;

/// <summary>Plans made for plain sheets and no wishes, held against sheets as they are and against what the maker wishes.</summary>
public class VirtualSawKeepsWishes
{
    private static readonly CutRequest Asked = Request(Part("a", 900, 300), Part("b", 800, 300), Held("h", 800, 250));

    private static readonly Plan Plain = PlanOf(Asked);

    [Theory]
    [InlineData("a")]
    [InlineData("h")]
    public void No_part_and_no_blank_lies_on_a_bad_area(string part)
    {
        var piece = Plain.Workpieces.Single(w => w.Part == part);
        var bad = new BadArea(piece.X + piece.Length - Mm(1), piece.Y, Mm(50), Mm(1), "knot");
        Refused($"{part} lies on the bad area", Of(Sheet() with { Bad = [bad] }));
        var beside = bad with { X = piece.X + piece.Length, Length = Mm(1) };
        Assert.True(VirtualSaw.Run(Plain, Of(Sheet() with { Bad = [beside] })).Accepted);
    }

    [Fact]
    public void An_end_out_of_square_is_squared_before_it_is_measured_from() =>
        Refused("out of square", Of(Sheet() with { OutOfSquare = Mm(4) }));

    [Fact]
    public void A_part_comes_from_the_stock_it_is_pinned_to()
    {
        var parts = Asked.Parts.Select(p => p.Id == "b" ? p with { From = "flame" } : p);
        Refused(
            "b is to come from flame",
            Asked with
            {
                Parts = [.. parts],
                Stock = [Sheet(), Sheet() with { Id = "flame" }],
            }
        );
    }

    /// <summary>By hand: one strip 300 wide, both parts crosscut from it.</summary>
    [Fact]
    public void Parts_kept_apart_share_no_strip() =>
        Refused("come from one strip", Asked with { Apart = [new("unlike", ["a", "b"])] });

    [Fact]
    public void A_chunk_is_no_heavier_than_one_person_handles() =>
        Refused(
            "weighs",
            Of(Sheet() with { KilogramsPerSquareMetre = 12 }) with
            {
                Saws = Jobs.Shop with { ChunkKilograms = 5 },
            }
        );

    [Fact]
    public void A_piece_at_the_crosscut_stop_is_no_wider_than_its_guide() =>
        Refused("the crosscut guide takes", Asked with { Saws = Jobs.Shop with { CrosscutWidth = Mm(200) } });

    private static CutRequest Of(StockPiece stock) => Asked with { Stock = [stock] };

    private static void Refused(string says, CutRequest asked)
    {
        var verdict = VirtualSaw.Run(Plain, asked);
        Assert.False(verdict.Accepted);
        Assert.Contains(says, verdict.Why);
    }
}
