#pragma once
// The consent form as a page to sign: a box for each use, in type that is read without glasses.

#include "indexer/looks/consent_form.h"
#include "indexer/sheet/page.h"

namespace quarterturn {

inline constexpr double least_form_points = 10;  // common practice for what is signed

Document consent_sheet(const std::vector<FormBlock>& blocks, const FormFacts& facts,
                       TextRuler& ruler, Paper paper);

}  // namespace quarterturn
