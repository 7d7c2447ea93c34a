#pragma once
// The fields of the small records that a recipe is put together from.

#include "indexer/record/recipe.h"
#include "ui/recipe/bound_fields.h"
#include "ui/recipe/flow_of_fields.h"
#include "ui/recipe/record_list.h"
#include "ui/recipe/text_field.h"

namespace quarterturn {

class RecipeAids;

// The fields of one record, beside each other.
template <class Record>
class RecordFields : public FlowOfFields {
  public:
    void show_value(const Record& record) { fields_.show(record); }
    Record value() const { return fields_.value(); }

  protected:
    BoundFields<Record>& fields() { return fields_; }

  private:
    BoundFields<Record> fields_;
};

// The same, where a record that says nothing is none.
template <class Record>
class OptionalRecordFields : public RecordFields<Record> {
  public:
    void show_value(const std::optional<Record>& record) {
        RecordFields<Record>::show_value(record.value_or(Record{}));
    }
    std::optional<Record> value() const {
        const Record record = RecordFields<Record>::value();
        return record == Record{} ? std::nullopt : std::optional(record);
    }
};

class ProductFields : public RecordFields<Product> {
  public:
    explicit ProductFields(RecipeAids& aids);
};

// The temperature as her tool shows it, in one of the two units.
class HeatToolFields : public OptionalRecordFields<HeatTool> {
  public:
    explicit HeatToolFields(RecipeAids& aids);
};

class WindingFields : public RecordFields<Winding> {
  public:
    WindingFields();
};

class SettingFields : public RecordFields<Setting> {
  public:
    SettingFields();
};

class PinsFields : public RecordFields<Pins> {
  public:
    explicit PinsFields(RecipeAids& aids);
};

class BackcombingFields : public OptionalRecordFields<Backcombing> {
  public:
    explicit BackcombingFields(RecipeAids& aids);
};

class SensitivityFields : public RecordFields<Sensitivity> {
  public:
    explicit SensitivityFields(Date today);
};

using ProductList = ListOf<Product, ProductFields>;
using PinsList = ListOf<Pins, PinsFields>;
using LineList = ListOf<std::string, TextField>;  // panels; steps for a bridesmaid

ProductList* make_product_list(RecipeAids& aids);
PinsList* make_pins_list(RecipeAids& aids);

}  // namespace quarterturn
