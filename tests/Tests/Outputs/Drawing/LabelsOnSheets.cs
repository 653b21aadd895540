using CsCheck;
using Nookwright.Cutting;
using Nookwright.Drawing;
using Nookwright.Measure;
using Nookwright.Tests.Cutting;

namespace Nookwright.Tests.Drawing;

/// <summary>What is written on the pictures of sheets and settings, for plans of jobs drawn by lot.</summary>
public sealed class LabelsOnSheets
{
    private static readonly LengthFormat Format = LengthFormat.Millimetres(0.1m);

    /// <summary>As wide as the body of an A4 page, and a page of a tablet held upright.</summary>
    private static readonly Gen<(double Width, double Height)> AnyFrame = Gen.OneOf(
        Gen.Const((178.0, 100.0)),
        Gen.Const((110.0, 190.0))
    );

    private static readonly Gen<(CutRequest Job, Plan Plan)> AnyPlan = RandomJobs.Any.Select(job =>
        (job, Jobs.PlanOf(job with { Rules = job.Rules with { Effort = 0 } }))
    );

    [Fact]
    public void The_numbers_of_cuts_and_their_distances_lie_on_no_other_writing_and_on_the_picture() =>
        Gen.Select(AnyPlan, AnyFrame)
            .Sample(
                (made, frame) =>
                {
                    foreach (var picture in Pictures(made, frame))
                    {
                        var cuts = LabelsOf(picture, IsCut).ToList();
                        var others = LabelsOf(picture, g => !IsCut(g)).ToList();
                        foreach (var (i, cut) in cuts.Index())
                        {
                            Assert.True(IsOn(picture, cut), $"{cut.Text} lies off the picture");
                            foreach (var other in others.Concat(cuts.Skip(i + 1)))
                                Assert.False(Meet(cut, other), $"{cut.Text} on {other.Text}, {picture.Title}");
                        }
                    }
                },
                iter: 15,
                threads: 1
            );

    [Fact]
    public void Every_cut_of_the_breakdown_has_its_number_once() =>
        AnyPlan.Sample(
            made =>
            {
                foreach (var picture in Pictures(made, (178, 100)))
                {
                    var numbers = LabelsOf(picture, IsCut).Where(l => l.Bold).Select(l => l.Text).ToList();
                    Assert.Equal(numbers.Distinct(), numbers);
                }
                var all = Pictures(made, (178, 100)).Sum(p => LabelsOf(p, IsCut).Count(l => l.Bold));
                Assert.Equal(made.Plan.Breakdown.Count, all);
            },
            iter: 8,
            threads: 1
        );

    [Fact]
    public void Nothing_on_the_picture_of_a_setting_is_written_over_anything_else() =>
        Gen.Select(AnyPlan, Gen.Int[27, 62])
            .Sample(
                (made, height) =>
                {
                    foreach (var visit in made.Plan.Visits)
                    {
                        var picture = SettingPicture.Of(visit, made.Plan, made.Job, Format, 168, height);
                        var labels = ViewTests.LabelsOf(picture.Marks).ToList();
                        foreach (var (i, label) in labels.Index())
                        {
                            Assert.True(IsOn(picture, label), $"{label.Text} lies off the picture");
                            foreach (var other in labels.Skip(i + 1))
                                Assert.False(Meet(label, other), $"{label.Text} on {other.Text}, {picture.Title}");
                        }
                    }
                },
                iter: 15,
                threads: 1
            );

    private static IEnumerable<Picture> Pictures(
        (CutRequest Job, Plan Plan) made,
        (double Width, double Height) frame
    ) =>
        made.Plan.Sheets.Select(sheet =>
            SheetLayout.Of(made.Plan, sheet.Number, made.Job, Format, frame.Width, frame.Height)
        );

    private static bool IsCut(Mark.Group group) => group.Caption?.StartsWith("Cut ", StringComparison.Ordinal) == true;

    private static IEnumerable<Mark.Label> LabelsOf(Picture picture, Func<Mark.Group, bool> which) =>
        picture.Marks.OfType<Mark.Group>().Where(which).SelectMany(g => ViewTests.LabelsOf(g.Marks));

    private static bool IsOn(Picture picture, Mark.Label label) =>
        LabelBox.Of(label) is var box
        && box.Left >= 0
        && box.Top >= 0
        && box.Right <= picture.Width
        && box.Bottom <= picture.Height;

    private static bool Meet(Mark.Label one, Mark.Label other)
    {
        var (a, b) = (LabelBox.Of(one), LabelBox.Of(other));
        return a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;
    }
}
