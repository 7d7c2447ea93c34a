// qturn: Quarterturn on the command line.

#include "app/qturn/commands.h"

int main(int argc, char** argv) {
    return quarterturn::run_line(argc, argv);
}
