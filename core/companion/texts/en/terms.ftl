### Words that differ between regions. American here; British in texts/en-GB/terms.ftl.

-ground = ground
-lift = lift
-windshield = windshield
-labor = labor
-labor-start = Labor
