using CsCheck;
using Nookwright.Projects;

namespace Nookwright.Tests.Projects;

public class HistoryTests
{
    private static readonly History Start = History.Of(new Project { Name = "0" });

    [Fact]
    public void A_step_back_is_the_old_document_itself_and_a_step_forward_the_new_one()
    {
        var edited = Start.Edit("call it 1", job => job with { Name = "1" });
        Assert.Same(Start.Current, edited.StepBack().Current);
        Assert.Same(edited.Current, edited.StepBack().StepForward().Current);
        Assert.Equal(["call it 1"], edited.Done);
        Assert.Equal(["call it 1"], edited.StepBack().Undone);
    }

    [Fact]
    public void A_new_edit_after_a_step_back_closes_the_way_forward()
    {
        var other = Start.Edit("a", Named("a")).StepBack().Edit("b", Named("b"));
        Assert.False(other.CanStepForward);
        Assert.Equal(["b"], other.Done);
    }

    [Fact]
    public void An_edit_that_changes_nothing_is_none() => Assert.Same(Start, Start.Edit("nothing", job => job));

    [Fact]
    public void Beyond_the_ends_there_is_nothing_to_step_to()
    {
        Assert.Same(Start, Start.StepBack());
        Assert.Same(Start, Start.StepForward());
    }

    [Fact]
    public void However_many_edits_and_steps_it_agrees_with_a_list_and_a_place_in_it() =>
        Gen.Int[0, 3]
            .Array[0, 200]
            .Sample(moves =>
            {
                var (history, names, at) = (Start, new List<string> { "0" }, 0);
                foreach (var (number, move) in moves.Index())
                {
                    (history, at) = move switch
                    {
                        0 => (history.StepBack(), Math.Max(0, at - 1)),
                        1 => (history.StepForward(), Math.Min(names.Count - 1, at + 1)),
                        _ => (history.Edit($"{number}", Named($"{number}")), at + 1),
                    };
                    if (move > 1)
                        names = [.. names.Take(at), $"{number}"];
                    Assert.Equal(names[at], history.Current.Name);
                    Assert.Equal(names.Skip(1).Take(at).Reverse(), history.Done);
                    Assert.Equal(names.Skip(at + 1), history.Undone);
                }
            });

    private static Func<Project, Project> Named(string name) => job => job with { Name = name };
}
