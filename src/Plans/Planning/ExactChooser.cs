using Google.OrTools.Sat;

namespace Nookwright.Planning;

/// <summary>Chooses sheets by constraint programming: every item once, no circle in the order of visits.</summary>
/// <remarks>
/// Each visit of a setting has a place in the order; a sheet that is taken holds its rules among the places. One worker, a
/// fixed seed and a limit in the solver's own steps, not in time: the same question has the same answer.
/// </remarks>
/// <param name="most">The limit, in the solver's deterministic seconds.</param>
internal sealed class ExactChooser(double most) : ISheetChooser
{
    /// <inheritdoc/>
    public SheetChoice? Choose(SheetQuestion question, CancellationToken stop)
    {
        stop.ThrowIfCancellationRequested();
        try
        {
            return Solved(question, stop);
        }
        catch (Exception e) when (e is DllNotFoundException or TypeInitializationException)
        {
            return null; // The solver has no native code for this machine: what the search has found stands.
        }
    }

    private SheetChoice? Solved(SheetQuestion question, CancellationToken stop)
    {
        var choice = new ChoiceModel(question);
        var solver = new CpSolver
        {
            StringParameters = FormattableString.Invariant(
                $"num_workers:1,random_seed:1,max_deterministic_time:{most},symmetry_level:0"
            ),
        };
        using var end = stop.Register(solver.StopSearch);
        var status = solver.Solve(choice.Model);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? new(
                [.. choice.Counts.Select(c => (int)solver.Value(c))],
                (int)choice.Repeats.Sum(solver.Value),
                status == CpSolverStatus.Optimal
            )
            : null;
    }
}
