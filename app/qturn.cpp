// qturn: Quarterturn on the command line.

#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"

int main(int argc, char** argv) {
    quarterturn::CommandSet commands;
    add_all_commands(commands);
    return commands.run(argc, argv);
}
