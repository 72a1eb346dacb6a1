CREATE TABLE half_made (x TEXT) STRICT;

DELETE FROM register;

INSERT INTO nowhere VALUES (1);
