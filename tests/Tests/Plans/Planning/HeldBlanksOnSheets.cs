using Nookwright.Cutting;
using Nookwright.Projects;
using Nookwright.Tests.Cutting;

namespace Nookwright.Tests.Planning;

public sealed class HeldBlanksOnSheets
{
    /// <summary>The long part fits only the 3050 sheet; 1 000 × 600 and 2 900 × 600 lie side by side on its 1220 with cuts to spare.</summary>
    [Fact]
    public void A_blank_takes_room_on_a_sheet_that_is_needed_anyway()
    {
        var request = Jobs.Request(
            Jobs.Part("long", 2900, 500, PanelFigure.Length),
            Jobs.Held("waits", 1000, 500, PanelFigure.Length)
        ) with
        {
            Stock = [Jobs.Sheet(price: 60), Jobs.Sheet(3050, price: 80)],
            Saws = Jobs.Shop with
            {
                ChunkLength = Jobs.Mm(3050),
                TrackLength = Jobs.Mm(3100),
                CrosscutReach = Jobs.Mm(3000),
            },
        };
        var sheet = Assert.Single(Jobs.PlanOf(request).Sheets);
        Assert.Equal(Jobs.Mm(3050), sheet.Length);
    }

    [Fact]
    public void No_visit_touches_what_is_held()
    {
        var request = Jobs.Request(Jobs.Part("now", 600, 400), Jobs.Held("waits", 600, 400));
        var plan = Jobs.PlanOf(request);
        var held = Assert.Single(plan.Workpieces, w => w.Part == "waits");
        Assert.Equal(WorkpieceUse.Held, held.Use);
        Assert.DoesNotContain(plan.Visits.SelectMany(v => v.Cuts), c => c.On == held.Id || c.Gives == held.Id);
        Assert.True(held.Length >= Jobs.Mm(600) && held.Width >= Jobs.Mm(400));
    }
}
