#pragma once
// Where what is of others says the name of a client who goes.

#include "indexer/erasure/erase.h"
#include "indexer/store/sought_names.h"

namespace quarterturn {

// None where one look alone goes.
SoughtNames names_that_go(const ErasurePlan& plan);

// The weddings she is of, in any way.
std::vector<WeddingId> weddings_of(Library& library, ClientId client);

// Sentences: what is named with a part of her name, and stays so. Of weddings, these.
std::vector<std::string> named_with_a_part(Library& library, std::span<const WeddingId> weddings,
                                           const std::string& name);

// Sentences: where her name stays for now.
std::vector<std::string> words_of_places_left(const std::vector<NamedPlace>& places);

}  // namespace quarterturn
