using Nookwright.Cutting;
using Nookwright.Files;
using Nookwright.Flow;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Tests.House;

namespace Nookwright.Tests.Flow;

/// <summary>A sheet of a demo's plan is kept as it is, as on the page, saved, and read again.</summary>
public class KeptSheetsOfDemos
{
    private static readonly Project Demo = JobFile.Read(Checkout.File("demo", "window-nook.nook.json")).Value;

    private static readonly Lazy<Workbook> Before = new(() => Planned(Demo));

    [Fact]
    public void A_kept_sheet_survives_the_file_and_an_edit_of_other_pieces()
    {
        var number = FreeSheet();
        var kept = Again(Before.Value.KeepSheet(number).Value);
        var after = Planned(kept.SetField("pieces/base-2/depth", "13 1/2 in").Value);
        Assert.DoesNotContain(after.Findings, f => f.Rule.StartsWith("cutting.pinned-sheet"));
        var sheet = Assert.Single(after.Plan!.Sheets, s => s.Pin == "sheet-1");
        Assert.Equal(Places(Before.Value.Plan!, number), Places(after.Plan, sheet.Number));
        Assert.Contains("is kept already", after.KeepSheet(sheet.Number).Refusal.Message);
    }

    [Fact]
    public void A_kept_sheet_goes_by_a_pieces_new_name()
    {
        var kept = Before.Value.KeepSheet(1).Value;
        var piece = Before
            .Value.Plan!.Workpieces.First(w => w is { Sheet: 1, Use: WorkpieceUse.Part })
            .Part!.Split('.')[0];
        var after = Planned(Again(kept.RenamePiece(piece, "renamed").Value));
        Assert.Single(after.Plan!.Sheets, s => s.Pin == "sheet-1");
        Assert.DoesNotContain(after.Findings, f => f.Rule.StartsWith("cutting.pinned-sheet"));
    }

    [Fact]
    public void A_sheet_that_cannot_be_kept_is_told_and_let_go()
    {
        var kept = Before.Value.KeepSheet(1).Value;
        var after = Planned(kept.SetField("shop/tableSaw/kerf", "3/32 in").Value);
        Assert.Single(after.Findings, f => f.Rule == "cutting.pinned-sheet-not-cut");
        var free = kept.LetSheetChange("sheet-1").Value;
        Assert.Empty(free.Cutting.Sheets);
        Assert.False(free.LetSheetChange("sheet-1").Ok);
    }

    [Fact]
    public void A_kept_sheet_that_was_spoiled_in_the_file_is_told_with_its_field()
    {
        var kept = JobFile.Write(Before.Value.KeepSheet(1).Value);
        var at = kept.LastIndexOf("\"distance\": ", StringComparison.Ordinal) + 12;
        var spoiled = JobFile.ReadText(kept[..at] + "1" + kept[at..], "spoiled").Value;
        var finding = Assert.Single(Workbook.Of(spoiled).Findings, f => f.Rule == "cutting.kept-sheet-not-read");
        Assert.Equal("cutting/sheets/sheet-1/plan", finding.Field);
        Assert.Contains("cannot be cut as it stands here", finding.Message);
    }

    [Fact]
    public void What_is_issued_stays_as_it_is_and_needs_no_keeping()
    {
        var kept = Planned(Before.Value.KeepSheet(1).Value);
        var issued = Planned(kept.Issue(new(2026, 11, 25)).Value);
        Assert.DoesNotContain(issued.Findings, f => f.Rule.StartsWith("cutting.pinned-sheet"));
        Assert.False(issued.KeepSheet(1).Ok);
    }

    /// <summary>A sheet that none of base 2 comes from.</summary>
    private static int FreeSheet() =>
        Before
            .Value.Plan!.Sheets.Select(s => s.Number)
            .First(number => !Places(Before.Value.Plan!, number).Any(p => p.Part!.StartsWith("base-2.")));

    private static HashSet<(string? Part, Length X, Length Y, Length Length, Length Width)> Places(
        Plan plan,
        int sheet
    ) =>
        [
            .. plan
                .Workpieces.Where(w => w.Use is WorkpieceUse.Part or WorkpieceUse.Held)
                .Where(w => w.Sheet == sheet)
                .Select(w => (w.Part, w.X, w.Y, w.Length, w.Width)),
        ];

    private static Project Again(Project project) => JobFile.ReadText(JobFile.Write(project), "again").Value;

    private static Workbook Planned(Project project) =>
        Workbook.Of(project).WithPlan(null, TestContext.Current.CancellationToken);
}
