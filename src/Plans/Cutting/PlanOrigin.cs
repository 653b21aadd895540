namespace Nookwright.Cutting;

/// <summary>What a plan was made from, so that a plan after an edit can keep what the edit does not touch. Only a planner looks into it.</summary>
public abstract record PlanOrigin
{
    /// <summary>Nothing but its own kind.</summary>
    private protected PlanOrigin() { }
}
