-- SPDX-License-Identifier: GPL-3.0-or-later
-- The three roles of a shop's database. They belong to the whole server, and nobody logs in as one of them: people and
-- benches have logins of their own, which are given one (GRANT caprail_bench TO bench_3). Run before the migrations, by
-- somebody who may make roles; where they exist already, nothing is done.
DO $$
DECLARE
  wanted text;
BEGIN
  FOREACH wanted IN ARRAY ARRAY['caprail_keeper', 'caprail_bench', 'caprail_reader'] LOOP
    IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = wanted) THEN
      BEGIN
        EXECUTE format('CREATE ROLE %I NOLOGIN', wanted);
      EXCEPTION WHEN duplicate_object OR unique_violation THEN
        NULL; -- made for another database of this server at this moment
      END;
    END IF;
  END LOOP;
  IF NOT pg_has_role(current_user, 'caprail_keeper', 'MEMBER') THEN
    EXECUTE format('GRANT caprail_keeper TO %I', current_user);
  END IF;
END $$;
CREATE SCHEMA IF NOT EXISTS caprail AUTHORIZATION caprail_keeper;
