#include "demo_photos/shape/clay.h"

namespace quarterturn::demo {

std::shared_ptr<const Clay> mould(const Face& face, float fineness) {
    const HeadShape shape(face);
    const float cell = 0.075F / std::sqrt(fineness);
    Clay clay{shape,
              DistanceGrid([&](Vec3 p) { return shape.solid(p); }, {-19.5F, -31.0F, -18.5F},
                           {19.5F, 17.0F, 15.0F}, fineness > 0.6F ? 0.30F : 0.42F),
              surface_of([&](Vec3 p) { return shape.skin(p); }, {-9.5F, -18.0F, -11.0F},
                         {9.5F, 13.0F, 12.5F}, cell),
              surface_of([&](Vec3 p) { return shape.cape(p); }, {-18.0F, -27.0F, -11.0F},
                         {18.0F, -12.0F, 7.0F}, cell * 3.0F),
              surface_of([&](Vec3 p) { return shape.skull(p); }, {-8.5F, -8.0F, -11.0F},
                         {8.5F, 13.0F, 10.0F}, 0.3F)};
    clay.cape.material = Material::cape;
    return std::make_shared<const Clay>(std::move(clay));
}

}  // namespace quarterturn::demo
