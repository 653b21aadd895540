using CsCheck;
using Nookwright.Cutting;

namespace Nookwright.Tests.Cutting;

public class RandomPlans
{
    [Fact]
    public void Every_plan_of_a_job_drawn_by_lot_can_be_cut() =>
        RandomJobs.Any.Sample(job => Assert.Null(VirtualSaw.Run(Jobs.PlanOf(job), job).Why), iter: 100, threads: 1);
}
