-- A picture whose photo was taken back makes room for others. The log keeps what was said of it.
GRANT DELETE ON photo TO halfshaft_app;
