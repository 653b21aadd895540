using CsCheck;
using Nookwright.Buying;
using Nookwright.Cutting;
using Nookwright.Design;
using Nookwright.Measure;
using Nookwright.Projects;
using static Nookwright.Tests.Measure.Given;
using static Nookwright.Tests.Parts.PartsGiven;

namespace Nookwright.Tests.Buying;

public class ShoppingListTests
{
    private static readonly Project Shop = new()
    {
        Units = LengthUnit.Millimetres,
        Shop = new()
        {
            Sheets =
            [
                new()
                {
                    Id = "birch-18",
                    Name = "Birch plywood 18",
                    Nominal = "18 mm",
                    KilogramsPerSquareMetre = 12,
                    Stock =
                    [
                        new()
                        {
                            Length = "2500",
                            Width = "1250",
                            Price = 84.50m,
                        },
                        new()
                        {
                            Length = "1200",
                            Width = "600",
                            Quantity = 1,
                            Price = 0,
                            Offcut = true,
                        },
                    ],
                },
                new()
                {
                    Id = "mdf-18",
                    Nominal = "18 mm",
                    Stock = [new() { Length = "2800", Width = "2070" }],
                },
            ],
            Edgings =
            [
                new()
                {
                    Id = "birch-tape",
                    Name = "Birch tape",
                    Thickness = "0.5 mm",
                },
            ],
        },
    };

    /// <summary>By hand: 2 sheets of 84.50 are 169.00; one is 2.5 × 1.25 = 3.125 m², at 12 kg/m² 37.5 kg.</summary>
    [Fact]
    public void Sheets_are_counted_by_material_and_size_with_price_and_weight()
    {
        var list = ShoppingList.Of(PlanOf(Birch(1), Birch(2)), PartsOf(), Shop);
        var line = Assert.Single(list.Sheets);
        Assert.Equal(("Birch plywood 18", 2, 84.50m, 169.00m), (line.Name, line.Count, line.Price, line.Cost));
        Assert.Equal((37.5m, 75m), (line.KilogramsEach, list.Kilograms));
        Assert.Equal("Sheets 1, 2 of the cutting plan: 0 parts come off them.", line.Why);
    }

    [Fact]
    public void An_offcut_is_taken_from_the_rack_and_costs_nothing()
    {
        var offcut = Offcut(1);
        var list = ShoppingList.Of(PlanOf(offcut, Birch(2)), PartsOf(), Shop);
        Assert.Equal((1, 84.50m), (Assert.Single(list.FromRack).Count, list.KnownCost));
        Assert.Equal(Mm(2500), Assert.Single(list.Sheets).Length);
    }

    [Fact]
    public void A_sheet_without_a_price_is_said_and_not_summed()
    {
        var list = ShoppingList.Of(PlanOf(Birch(1), Mdf(2)), PartsOf(), Shop);
        Assert.Equal("mdf-18", Assert.Single(list.Unpriced).Material);
        Assert.Equal(84.50m, list.KnownCost);
        Assert.Null(list.Kilograms);
    }

    /// <summary>By hand: two edges of 600 and one of 300 are 1500; a tenth more is 1650.</summary>
    [Fact]
    public void Edging_is_the_sum_of_the_edges_and_a_tenth_more()
    {
        var tape = new PanelEdge("birch-tape", Length.Zero, null);
        var parts = PartsOf(
            Panel("a.x", 600, 300) with
            {
                Edges = new(tape, null, tape, null),
            },
            Panel("b.x", 600, 300) with
            {
                Edges = new(null, null, tape, null),
            }
        );
        var line = Assert.Single(ShoppingList.Of(PlanOf(), parts, Shop).Edgings);
        Assert.Equal(("Birch tape", Mm(1500), Mm(1650)), (line.Name, line.OnParts, line.ToBuy));
        Assert.StartsWith("3 edges of 2 parts come to 1500 mm; 10 % more", line.Why);
    }

    /// <summary>By hand: 48 in and a tenth is 52.8 in; whole inches: 53.</summary>
    [Fact]
    public void In_inches_edging_is_bought_by_the_inch()
    {
        var tape = new PanelEdge("birch-tape", Length.Zero, null);
        var parts = PartsOf(Panel("a.x", 1219.2m, 300) with { Edges = new(null, null, tape, null) });
        var list = ShoppingList.Of(PlanOf(), parts, Shop with { Units = LengthUnit.Inches });
        Assert.Equal(In(53), Assert.Single(list.Edgings).ToBuy);
    }

    [Fact]
    public void A_part_the_plan_has_no_sheet_for_is_named()
    {
        var plan = PlanOf(Birch(1)) with { Workpieces = [Piece("a.x")] };
        var list = ShoppingList.Of(plan, PartsOf(Panel("a.x", 600, 300), Panel("b.x", 9000, 300)), Shop);
        Assert.Equal(["b.x"], list.PartsWithoutSheet);
        Assert.Equal("Sheet 1 of the cutting plan: 1 part comes off it.", list.Sheets[0].Why);
    }

    /// <summary>Whatever the plan uses is on the list, once.</summary>
    [Fact]
    public void Every_sheet_of_the_plan_is_on_the_list_once() =>
        Gen.Int[0, 3]
            .Array[0, 20]
            .Sample(kinds =>
            {
                var plan = PlanOf([.. kinds.Select((kind, i) => Kind(kind, i + 1))]);
                var list = ShoppingList.Of(plan, PartsOf(), Shop);
                return list.Sheets.Concat(list.FromRack).Sum(line => line.Count) == kinds.Length
                    && list.FromRack.Sum(line => line.Count) == kinds.Count(kind => kind == 2);
            });

    private static PlanSheet Kind(int kind, int number) =>
        kind switch
        {
            0 => Birch(number),
            1 => Mdf(number),
            2 => Offcut(number),
            _ => Mdf(number) with { Material = "oak", Stock = "oak/1" },
        };

    private static Plan PlanOf(params IReadOnlyList<PlanSheet> sheets) => new(sheets, [], [], [], [], 0);

    private static PlanSheet Birch(int number) =>
        new(number, "birch-18/1", "birch-18", Mm(2500), Mm(1250), $"S{number}");

    private static PlanSheet Offcut(int number) =>
        new(number, "birch-18/2", "birch-18", Mm(1200), Mm(600), $"S{number}");

    private static PlanSheet Mdf(int number) => new(number, "mdf-18/1", "mdf-18", Mm(2800), Mm(2070), $"S{number}");

    private static Workpiece Piece(string part) =>
        new("P1", 1, Length.Zero, Length.Zero, Mm(600), Mm(300), WorkpieceUse.Part, part);
}
