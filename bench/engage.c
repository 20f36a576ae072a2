/* The loops of engage.ts and edge-loads.ts in C, as a yardstick: same arrays, same order, same figures.
 *
 * engage FILE reads a bit as bench/c-yardstick.ts writes it, runs each loop over and over, and prints the best time of one
 * run in seconds with a sum that shows that the work was done and done right. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

enum { LAW = 5, SUMS = 15, BLOCKS = 400, RUNS = 200 };

typedef struct {
  int cells, passes, cutters;
  double cell_width, advance, contact_stress, flat_friction, kappa;
  int *first_pass, *cutter;
  double *cell_radius, *height, *azimuth, *cos_azimuth, *sin_azimuth, *slope, *cos_slope, *flat_length, *chamfer_height;
  double *laws;
} bit;

static void *room(size_t bytes) {
  void *place = malloc(bytes);
  if (!place) exit(1);
  return place;
}

static void take(FILE *file, void *into, size_t bytes) {
  if (fread(into, 1, bytes, file) != bytes) exit(1);
}

static double *doubles(FILE *file, int count) {
  double *row = room(count * sizeof(double));
  take(file, row, count * sizeof(double));
  return row;
}

static int *wholes(FILE *file, int count) {
  int *row = room(count * sizeof(int));
  take(file, row, count * sizeof(int));
  return row;
}

static bit read_bit(const char *path) {
  FILE *file = fopen(path, "rb");
  bit b;
  if (!file) exit(1);
  int *sizes = wholes(file, 4);
  double *numbers = doubles(file, 5);
  b.cells = sizes[0], b.passes = sizes[1], b.cutters = sizes[2];
  b.cell_width = numbers[0], b.advance = numbers[1];
  b.contact_stress = numbers[2], b.flat_friction = numbers[3], b.kappa = numbers[4];
  b.cell_radius = doubles(file, b.cells);
  b.height = doubles(file, b.passes);
  b.azimuth = doubles(file, b.passes);
  b.cos_azimuth = doubles(file, b.passes);
  b.sin_azimuth = doubles(file, b.passes);
  b.slope = doubles(file, b.passes);
  b.cos_slope = doubles(file, b.passes);
  b.flat_length = doubles(file, b.passes);
  b.chamfer_height = doubles(file, b.passes);
  b.laws = doubles(file, LAW * b.cutters);
  b.first_pass = wholes(file, b.cells + 1);
  b.cutter = wholes(file, b.passes);
  fclose(file);
  return b;
}

__attribute__((noinline)) static void engage(const bit *b, double advance, double *restrict depth,
                                             double *restrict area, double *restrict volume) {
  const double per_radian = advance / (2 * M_PI);
  memset(area, 0, b->cutters * sizeof(double));
  memset(volume, 0, b->cutters * sizeof(double));
  for (int cell = 0; cell < b->cells; cell++) {
    const int from = b->first_pass[cell], to = b->first_pass[cell + 1];
    double deepest = -INFINITY;
    for (int k = from; k < to; k++) {
      const double passing = b->height[k] - per_radian * b->azimuth[k];
      depth[k] = passing;
      if (passing > deepest) deepest = passing;
    }
    const double ring_per_depth = 2 * M_PI * b->cell_radius[cell] * b->cell_width;
    double surface = deepest - advance;
    for (int k = from; k < to; k++) {
      const double taken = depth[k] - surface;
      if (taken > 0) {
        const int by = b->cutter[k];
        depth[k] = taken;
        surface += taken;
        area[by] += taken * b->cell_width;
        volume[by] += taken * ring_per_depth;
      } else {
        depth[k] = 0;
      }
    }
  }
}

__attribute__((noinline)) static void edge_loads(const bit *b, const double *restrict depth, double *restrict sums) {
  memset(sums, 0, SUMS * b->cutters * sizeof(double));
  for (int cell = 0; cell < b->cells; cell++) {
    const double radius = b->cell_radius[cell];
    for (int k = b->first_pass[cell]; k < b->first_pass[cell + 1]; k++) {
      const double taken = depth[k];
      if (!(taken > 0)) continue;
      const double *law = b->laws + LAW * b->cutter[k];
      double *sum = sums + SUMS * b->cutter[k];
      const double cosine = b->cos_slope[k];
      const double width = b->cell_width / cosine;
      const double deep = taken * cosine;
      const double chamfer_length = law[4];
      const double bevel = chamfer_length > 0 ? fmin(deep, b->chamfer_height[k]) : 0;
      const double flat = fmin(b->flat_length[k], b->kappa * deep);
      const double cutting = law[1] * (deep - bevel) * width;
      const double on_flat = b->contact_stress * flat * width;
      const double contact = law[3] * bevel * width + on_flat;
      const double drag = (law[0] * (deep - bevel) + law[2] * bevel) * width + b->flat_friction * on_flat;
      const double axial = (cutting + contact) * cosine;
      const double outward = axial * b->slope[k];
      const double cos_angle = b->cos_azimuth[k], sin_angle = b->sin_azimuth[k];
      sum[0] += cutting;
      sum[1] += contact;
      sum[2] += cutting * cosine;
      sum[3] += contact * cosine;
      sum[4] += drag;
      sum[5] += outward;
      sum[6] += radius * drag;
      sum[7] += outward * cos_angle + drag * sin_angle;
      sum[8] += outward * sin_angle - drag * cos_angle;
      sum[9] -= radius * sin_angle * axial;
      sum[10] += radius * cos_angle * axial;
      sum[11] += width;
      if (contact > 0) {
        sum[12] += width;
        sum[13] += (flat + chamfer_length * bevel) * width;
      }
      if (deep > sum[14]) sum[14] = deep;
    }
  }
}

static double now(void) {
  struct timespec time;
  clock_gettime(CLOCK_MONOTONIC, &time);
  return time.tv_sec + 1e-9 * time.tv_nsec;
}

int main(int count, char **words) {
  if (count != 2) return 1;
  const bit b = read_bit(words[1]);
  double *depth = room(b.passes * sizeof(double)), *sums = room(SUMS * b.cutters * sizeof(double));
  double *area = room(b.cutters * sizeof(double)), *volume = room(b.cutters * sizeof(double));
  double best_engage = INFINITY, best_loads = INFINITY;
  for (int block = 0; block < BLOCKS; block++) {
    const double start = now();
    for (int run = 0; run < RUNS; run++) engage(&b, b.advance, depth, area, volume);
    const double between = now();
    for (int run = 0; run < RUNS; run++) edge_loads(&b, depth, sums);
    best_engage = fmin(best_engage, (between - start) / RUNS);
    best_loads = fmin(best_loads, (now() - between) / RUNS);
  }
  double whole_volume = 0, torque = 0;
  for (int by = 0; by < b.cutters; by++) whole_volume += volume[by], torque += sums[SUMS * by + 6];
  printf("{\"engage\": %.17g, \"edgeLoads\": %.17g, \"volume\": %.17g, \"torque\": %.17g}\n", best_engage, best_loads,
         whole_volume, torque);
  return 0;
}
