using Nookwright.Tests.Cutting;

namespace Nookwright.Tests.Planning;

public sealed class OffcutsFirst
{
    /// <summary>Both parts would fit on the sheet, and the small one comes off the rack all the same.</summary>
    [Fact]
    public void What_an_offcut_can_take_comes_off_it_even_where_a_sheet_is_bought()
    {
        var offcut = Jobs.Sheet(700, 500, quantity: 1, price: 0) with { IsOffcut = true };
        var request = Jobs.Request(Jobs.Part("large", 2000, 900), Jobs.Part("small", 400, 300)) with
        {
            Stock = [Jobs.Sheet(price: 60), offcut],
        };
        var plan = Jobs.PlanOf(request);
        var small = Assert.Single(plan.Workpieces, w => w.Part == "small");
        Assert.Equal(offcut.Id, plan.Sheets.Single(s => s.Number == small.Sheet).Stock);
        Assert.Equal(2, plan.Sheets.Count);
    }

    [Fact]
    public void An_offcut_nothing_fits_on_stays_on_the_rack()
    {
        var offcut = Jobs.Sheet(300, 200, quantity: 1, price: 0) with { IsOffcut = true };
        var request = Jobs.Request(Jobs.Part("large", 2000, 900)) with { Stock = [Jobs.Sheet(price: 60), offcut] };
        Assert.Single(Jobs.PlanOf(request).Sheets);
    }
}
